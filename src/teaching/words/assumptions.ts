import type { ASSUMPTION_GROUPS, AssumptionGroup, AssumptionName } from '../../questions/assumptions.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { Measures } from '../../rules/decision.ts';
import type { FeatureId } from '../../rules/features/ids.ts';

type InGroups = {
  [Group in AssumptionGroup]: `${Group}.${keyof (typeof ASSUMPTION_GROUPS)[Group] & string}`;
}[AssumptionGroup];
/** An assumption by its name; one of a group behind the name of its group. */
export type AssumptionKey = AssumptionName | InGroups | 'handLift.coupling';

/** Where an assumption shows: in a check, a rule of the class, a feature, or a measure of an arrangement. */
export type ShownBy =
  | { readonly check: CheckId }
  | { readonly rule: ClassRuleId }
  | { readonly feature: FeatureId }
  | { readonly measure: keyof Measures }
  | { readonly none: string };

export interface AssumptionLesson {
  /** why a number without a source is needed here, and what to put instead */
  readonly plain: string;
  readonly mistake: string;
  readonly shownBy: ShownBy;
}

const lesson = (shownBy: ShownBy, plain: string, mistake: string): AssumptionLesson => ({
  plain,
  mistake,
  shownBy,
});

const GAP = 'A gap is habit: what one shop calls tight another calls wide. Put your own.';
const PRICE = 'Prices differ from place to place. Put what your own supplier asks for.';
const MINUTES = 'Nobody publishes such minutes. Watch a few setups with a clock and put what you see.';

/** Every assumption as it is taught. A new one does not compile without. */
export const ASSUMPTION_LESSONS: Readonly<Record<AssumptionKey, AssumptionLesson>> = {
  brakeSafety: lesson(
    { check: 'brake-rotary' },
    'Tools wear, castings have hard spots, and a brake that slips once has spoiled the part. So the force is taken several times over.',
    'To lower it until a table passes.',
  ),
  brakeSafetyInterrupted: lesson(
    { check: 'brake-rotary' },
    'Every entry of a tooth is a blow. An interrupted cut is taken for more than a steady one.',
    'To call a cut steady because the cutter is.',
  ),
  approach: lesson({ check: 'reach-high' }, GAP, 'To set it to nothing because programs are good.'),
  clearGap: lesson({ check: 'table-clear' }, GAP, 'To forget screws, chips and hoses, which use it up.'),
  swingGap: lesson({ check: 'swing' }, GAP, 'To forget chips that lie on the table.'),
  connectorRoom: lesson(
    { check: 'column' },
    'Drawings end at the housing; plugs and the bend of hoses do not. Measure the plugs of the rotary that you mean.',
    'To bend a hose tighter than its maker allows.',
  ),
  spindleEfficiency: lesson(
    { check: 'spindle-power' },
    'Bearings, belts and gears take their part of what the motor gives.',
    'To take peak power and leave out losses.',
  ),
  centerErrorHand: lesson(
    { check: 'index-accuracy' },
    'How well a hand with an indicator finds an axis depends on the hand.',
    'To type what the indicator can show instead of what one can repeat.',
  ),
  centerErrorProbed: lesson(
    { check: 'index-accuracy' },
    'A probe finds an axis better than a hand does, as long as it is calibrated.',
    'To type the resolution of the probe.',
  ),
  toleranceShare: lesson(
    { check: 'index-accuracy' },
    'A tolerance has to be shared with tools, heat and clamping. The machine gets a part of it.',
    'To give it all to the machine.',
  ),
  kneeShare: lesson(
    { rule: 'moving-stiff' },
    'Size is chosen where more of it adds little. How little is a matter of taste.',
    'To set it to nothing and size for every last part.',
  ),
  leastCoverage: lesson(
    { rule: 'sides-tilt' },
    'An arrangement that holds only a small part of the work is no answer. Where the line lies is the owner’s to say.',
    'To ask for everything, and find nothing.',
  ),
  band: lesson(
    { none: 'It enters no single number: it says which arrangements count as level when they are ranked.' },
    'Numbers that differ by less than they are known are level.',
    'To rank by the last digit.',
  ),
  viseGap: lesson({ measure: 'viseStations' }, GAP, 'To forget handles and hoses.'),
  placeGap: lesson({ measure: 'viseStations' }, GAP, 'To put a vise where the work swings.'),
  bedOverhang: lesson(
    { none: 'It counts on tables that are built in: their vises stand on the faceplate.' },
    'On a round table vise beds stand over the edge; how far is common practice and no rule.',
    'To let the clamped end of a bed stand over.',
  ),
  viseWidth: lesson(
    { measure: 'viseStations' },
    'Where the shop names no vise a common one is taken.',
    'To leave it where your own vises are other ones.',
  ),
  viseLength: lesson(
    { none: 'It counts on tables that are built in: their vises stand on the faceplate.' },
    'Where the shop names no vise a common one is taken.',
    'To leave it where your own vises are other ones.',
  ),
  tableOverhang: lesson(
    { check: 'table-footprint' },
    'A base may stand over the edge a little, in some shops.',
    'To allow it without a look at doors and guards.',
  ),
  bearingShare: lesson(
    { none: 'It says when an overhang may hold at all; need and have of the check stay as they are.' },
    'Where a base overhangs enough of it has to bear on the table.',
    'To look at the bolts only.',
  ),
  slotMisfit: lesson(
    { check: 'slot-match' },
    'Holes have play, and slots have too.',
    'To file a hole until it fits.',
  ),
  tailstockRatio: lesson(
    { check: 'tailstock' },
    'How far a bar may stand out is a rule of the trade, and of the cut.',
    'To stretch it for thin bars, which sing first.',
  ),
  longestTool: lesson(
    {
      none: 'It says whether a longer tool can be bought at all; need and have of the check stay as they are.',
    },
    'Longer tools can be made, and then they cost and bend.',
    'To plan with special tools and forget their price.',
  ),
  plateThickness: lesson(
    {
      none: 'It is the height of a plate that has to go under the rotary; the checks of reach read the plate that was chosen.',
    },
    'An adapter plate has to be stiff, so it is thick.',
    'To plan a thin one.',
  ),
  platePrice: lesson(
    { none: 'It enters the price where a plate is needed, in place of an answer that nobody gave.' },
    PRICE,
    'To call it a trifle.',
  ),
  riserStep: lesson(
    { none: 'Risers are rounded up to it; it enters no number alone.' },
    'Risers come in steps.',
    'To order one to the millimeter.',
  ),
  oversize: lesson(
    { rule: 'swing-oversized' },
    'A table far larger than its work is slow, dear and in the way. How far is too far is judgment.',
    'To buy size for safety.',
  ),
  spreadWide: lesson(
    { rule: 'spread-wide-open' },
    'When sizes lie far apart is judgment.',
    'To fit the table to the mean.',
  ),
  threeAxisOften: lesson(
    { rule: 'three-axis-often-light' },
    'When three-axis work is frequent is judgment.',
    'To count orders instead of hours.',
  ),
  toolsPerSetup: lesson(
    { feature: 'toolSetter' },
    'How many tools are measured anew differs from shop to shop.',
    'To count the tools in the magazine.',
  ),
  deepHole: lesson(
    { feature: 'throughSpindleCoolant' },
    'When a hole is deep depends on the drill and the material.',
    'To judge by the depth alone.',
  ),
  chipLiters: lesson(
    { feature: 'chipConveying' },
    'When a shovel is enough is judgment.',
    'To measure loose chips. It is solid metal that counts here.',
  ),
  weeks: lesson(
    { measure: 'swapHours' },
    'Holidays, fairs and repairs leave fewer weeks than the calendar.',
    'To reckon with a full year.',
  ),
  ceilingRoom: lesson(
    { check: 'ceiling' },
    'Lids and motors go up when they are taken off. The maker’s plan says how far.',
    'To leave out pipes and lamps.',
  ),
  doorSide: lesson(
    { check: 'doorway' },
    'Hands and ropes need room beside the machine.',
    'To measure where the gate is widest.',
  ),
  doorSkates: lesson(
    { check: 'doorway' },
    'Skates differ. Ask the riggers for theirs.',
    'To forget the threshold.',
  ),
  voltageShare: lesson(
    { check: 'power' },
    'Machines live with a little more or less than their voltage. The plate of the machine says how much.',
    'To try it.',
  ),
  transformerPrice: lesson(
    { none: 'It enters the price where a transformer is needed.' },
    PRICE,
    'To forget who fits it.',
  ),
  phaseConverterPrice: lesson(
    { none: 'It enters the price where a phase converter is needed.' },
    PRICE,
    'To forget who fits it.',
  ),
  offsetMinutes: lesson({ feature: 'rotatingWorkOffset' }, MINUTES, 'To type hopes.'),
  probeMinutes: lesson({ feature: 'spindleProbe' }, MINUTES, 'To type hopes.'),
  setterMinutes: lesson({ feature: 'toolSetter' }, MINUTES, 'To type hopes.'),
  'swapMinutes.zero-point': lesson({ measure: 'swapHours' }, MINUTES, 'To leave out cleaning the base.'),
  'swapMinutes.keyed': lesson({ measure: 'swapHours' }, MINUTES, 'To leave out the search for the crane.'),
  'swapMinutes.trammed': lesson({ measure: 'swapHours' }, MINUTES, 'To time the quickest of all.'),
  'handLift.reach': lesson(
    { check: 'lift' },
    'Over the edge of a table arms are stretched. Measure at your own machine.',
    'To measure beside the machine.',
  ),
  'handLift.from': lesson(
    { check: 'lift' },
    'The height at which hands take hold.',
    'To lift from the floor and type the height of a bench.',
  ),
  'handLift.lift': lesson({ check: 'lift' }, 'How far it goes up or down.', 'To forget the sill.'),
  'handLift.coupling': lesson(
    { none: 'It is a word and no number: how well the hands hold.' },
    'A rotary has edges and no handles.',
    'To call it good because it can be held for a moment.',
  ),
};
