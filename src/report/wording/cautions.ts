import type { CautionId } from '../../rules/cautions.ts';

/** What can hurt someone, in a sentence or two each. */
export const CAUTION_WORDS: Readonly<Record<CautionId, string>> = {
  'tilting-table-drops':
    'A tilting table can drop when its brake opens or the power fails, and crush a hand. Prop or level it before reaching in.',
  'never-home-with-tool-in-work':
    'Never send the axes home with a tool in the work or beside it: the rotary turns as the axes move.',
  'lock-out':
    'Lock out electric power, air, hydraulics and gravity (tilt axis, vertical axis) before setting up or servicing inside the machine.',
  'guard-outside-the-old-guard':
    'A rotary that is added to a machine can move the hazard outside the old guard. A changed machine needs a new risk assessment, and guards to suit.',
  'unbalanced-work':
    'Work that sits off the rotary axis pulls on brake and drive and shakes at speed. Balance it, or turn it slowly.',
  'eye-bolts-at-an-angle':
    'Eye bolts lose most of their rating when they are pulled at an angle. Lift straight, or use hoist rings rated for the angle.',
  'hoist-rating-includes-rigging':
    'The rating of a hoist includes hook, slings and rigging; slings are tagged, inspected and never loaded above their rating at the real angle.',
  'machines-tip-on-skates': 'Machines are top-heavy and tip on skates. Moving one is work for riggers.',
  'combustible-chips':
    'Fine chips of titanium, magnesium and the like burn, and so does oil mist. Keep chips wet and cleared, and settle fire protection before the first cut.',
  'forces-are-estimates':
    'Cutting forces, clearances and fits are estimates from the numbers given. Prove every program out dry, slowly, with the work in place.',
  'licensed-trades-decide':
    'Rigging, floors, electrics, guarding and fire protection: local code and the licensed trades decide. Nothing here is an approval.',
  'rigid-oversize-fixture':
    'A part that is wider than the faceplate stands on its fixture alone. The fixture has to be rigid, and its overhang has to be watched at every tilt.',
  'loading-over-housing':
    'The housing of the rotary stands between the door and the work, so parts are loaded over it. Heavy parts and fixtures are not lifted over it by hand: plan a hoist or a cart, keep plugs and hoses out of the way, and let the seller say what may rest on the housing.',
  learners:
    'Whoever is still learning works on it only under the eye of somebody who is trained on this machine, and does not set up, prove out or reach in alone. What learners may do, and from which age, is decided by local rules.',
  'ask-the-seller':
    'Some things do not stand in common data. Have the seller confirm them in writing before ordering.',
};

/** To whom each of them defers, beside local code. */
export const CAUTION_ASKS: Readonly<Record<CautionId, string>> = {
  'tilting-table-drops': 'the maker of the rotary',
  'never-home-with-tool-in-work': 'the maker of the machine',
  'lock-out': 'your safety officer and a licensed electrician',
  'guard-outside-the-old-guard': 'the maker of the machine and your safety officer',
  'unbalanced-work': 'the maker of the rotary',
  'eye-bolts-at-an-angle': 'the rigger',
  'hoist-rating-includes-rigging': 'the rigger',
  'machines-tip-on-skates': 'the rigger',
  'combustible-chips': 'the fire authority and your insurer',
  'forces-are-estimates': 'whoever proves out the program',
  'licensed-trades-decide': 'a structural engineer, a licensed electrician, the rigger',
  'rigid-oversize-fixture': 'whoever designs the fixture',
  'loading-over-housing': 'the maker of the rotary',
  learners: 'whoever answers for training and safety in the shop',
  'ask-the-seller': 'the sellers',
};

/** A safety document and what it tells a buyer. */
export interface SafetyDocument {
  /** names of standards are the only wording that holds digits */
  readonly name: string;
  readonly says: string;
  /** title and scope were not read, but known */
  readonly fromMemory: boolean;
}

export const SAFETY_DOCUMENTS: readonly SafetyDocument[] = [
  {
    name: 'ISO 12100',
    says: 'assess the risks first; remove them by design, then guard, then inform; a changed machine needs a new assessment',
    fromMemory: true,
  },
  {
    name: 'ISO 16090-1',
    says: 'safety of milling machines and machining centers: tool changers, handling of work, powered clamping; only for metal and other cold materials that do not burn, so fine titanium and magnesium chips need more',
    fromMemory: false,
  },
  {
    name: '29 CFR 1910.212',
    says: 'guard the point of operation and moving parts; an open table added to a machine can move the hazard outside the old guard',
    fromMemory: true,
  },
  {
    name: '29 CFR 1910.147',
    says: 'lock out electric, air, hydraulic and gravity energy (tilt axis, vertical axis) for set-up and service',
    fromMemory: true,
  },
  {
    name: '29 CFR 1910.178',
    says: 'trained forklift drivers, who stay within the data plate at the real load center',
    fromMemory: false,
  },
  {
    name: '29 CFR 1910.184',
    says: 'slings tagged and inspected, never above the rated load at the real angle',
    fromMemory: false,
  },
  {
    name: '29 CFR 1910.22 and 1910.176',
    says: 'floors able to carry the load, clean and dry; aisles clear and marked',
    fromMemory: false,
  },
  {
    name: 'NFPA 79, IEC 60204-1',
    says: 'electrical parts of machines: disconnect, emergency stop, marking with full-load current and short-circuit rating',
    fromMemory: true,
  },
  {
    name: 'NFPA 484',
    says: 'machining, sawing and grinding of aluminum, magnesium, titanium, tantalum and zirconium that make powder or dust that burns: wet chips, housekeeping, a class D extinguishing agent for burning metal',
    fromMemory: false,
  },
];
