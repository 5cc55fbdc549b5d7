/** What cutting force and mass need to know about a material. */
export interface MaterialRow {
  /** specific cutting force at 1 mm chip thickness, N/mm² */
  readonly kc11: number;
  /** how fast it falls with chip thickness */
  readonly mc: number;
  /** kg/m³ */
  readonly density: number;
  /** assumed feed per tooth of a cut that the user did not describe, mm */
  readonly fz: number;
  /** assumed cutting speed of such a cut, m/min */
  readonly vc: number;
  /** fine chips of it burn */
  readonly combustible: boolean;
  /** where kc11 and mc come from */
  readonly source: string;
  readonly densitySource: string;
}

export const MATERIAL_IDS = [
  'steel-carbon',
  'steel-alloy',
  'steel-hardened',
  'stainless-austenitic',
  'iron-gray',
  'iron-ductile',
  'aluminum-wrought',
  'aluminum-cast',
  'titanium',
  'nickel-alloy',
  'brass',
  'plastic',
] as const;
export type MaterialId = (typeof MATERIAL_IDS)[number];

const VDI = 'VDI 3323 groups, one table of specific cutting forces (2017): group';

const row = (
  kc11: number,
  mc: number,
  density: number,
  [fz, vc]: readonly [number, number],
  source: string,
  densitySource: string,
  combustible = false,
): MaterialRow => ({
  kc11,
  mc,
  density,
  fz,
  vc,
  combustible,
  source,
  densitySource,
});

const GERE = 'Gere, Mechanics of Materials, 5th ed., table of densities';

/**
 * One row a material. Treat the forces as good to about ±30 %: tables differ by more than that.
 *
 * Formula: table
 * Symbols: kc11 specific cutting force at 1 mm, N/mm²; mc its exponent; density, kg/m³; fz assumed feed, mm a tooth; vc assumed cutting speed, m/min
 * Valid: the materials listed, sharp tools
 * Source: each row names its own
 * Example: MATERIALS['steel-alloy'].kc11 → 1775
 */
export const MATERIALS: Readonly<Record<MaterialId, MaterialRow>> = {
  'steel-carbon': row(1500, 0.22, 7850, [0.1, 150], `${VDI} 2`, GERE),
  'steel-alloy': row(1775, 0.24, 7850, [0.1, 120], `${VDI} 6`, GERE),
  'steel-hardened': row(4600, 0.25, 7850, [0.05, 60], `${VDI} 38; mc is an assumption`, GERE),
  'stainless-austenitic': row(
    2150,
    0.2,
    8000,
    [0.08, 90],
    `${VDI} 14`,
    'common value for 304 and 316, from memory',
  ),
  'iron-gray': row(1150, 0.2, 7200, [0.12, 150], `${VDI} 15`, `${GERE} (7000 to 7400)`),
  'iron-ductile': row(1225, 0.25, 7200, [0.12, 130], `${VDI} 17`, `${GERE} (7000 to 7400)`),
  'aluminum-wrought': row(800, 0.25, 2700, [0.1, 400], `${VDI} 22`, GERE),
  'aluminum-cast': row(700, 0.25, 2700, [0.1, 350], `${VDI} 23`, `${GERE}, as for wrought`, false),
  titanium: row(2110, 0.22, 4430, [0.06, 60], `${VDI} 37`, 'handbook value for Ti-6Al-4V, from memory', true),
  'nickel-alloy': row(
    3300,
    0.24,
    8500,
    [0.05, 35],
    `${VDI} 33`,
    'list of densities, nickel-chromium superalloy',
  ),
  brass: row(700, 0.27, 8500, [0.1, 200], `${VDI} 27`, `${GERE} (8400 to 8600)`),
  plastic: row(750, 0, 1400, [0.1, 300], 'assumption', 'assumption, top of the range for polyethylene'),
};
