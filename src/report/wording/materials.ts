import type { MaterialId } from '../../mechanics/forces/materials.ts';

export const MATERIAL_WORDS: Readonly<Record<MaterialId, string>> = {
  'steel-carbon': 'carbon steel',
  'steel-alloy': 'alloy steel',
  'steel-hardened': 'hardened steel',
  'stainless-austenitic': 'austenitic stainless steel',
  'iron-gray': 'gray iron',
  'iron-ductile': 'ductile iron',
  'aluminum-wrought': 'wrought aluminum',
  'aluminum-cast': 'cast aluminum',
  titanium: 'titanium',
  'nickel-alloy': 'nickel alloy',
  brass: 'brass',
  plastic: 'plastic',
};
