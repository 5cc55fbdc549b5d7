import type { MeasureToTake } from '../../rules/decision.ts';

/** What has to be done so that a check holds; `amount` says what its number is, null where it has none. */
export interface MeasureToTakeWords {
  readonly title: string;
  readonly does: string;
  readonly amount: string | null;
}

const take = (title: string, does: string, amount: string | null = null): MeasureToTakeWords => ({
  title,
  does,
  amount,
});

export const MEASURE_TO_TAKE_WORDS: Readonly<Record<MeasureToTake, MeasureToTakeWords>> = {
  'rigid-fixture': take(
    'Rigid oversize fixture',
    'Carry the part on a rigid fixture that is larger than the faceplate.',
    'size of the part that it carries',
  ),
  'adapter-plate': take(
    'Adapter plate',
    'Put an adapter plate between the rotary and the table, with the hole pattern of both.',
    'thickness',
  ),
  'bolts-on-table': take(
    'Base over the edge of the table',
    'Let the base stand over the edge, with every bolt of it on the table.',
    'overhang',
  ),
  'longer-tool-there': take(
    'Longer tool for the low features',
    'Cut the lowest features with a longer tool, so that the spindle need not come down so far.',
    'gauge length of at least',
  ),
  'buy-longer-tool': take(
    'Longer tool to be bought',
    'Buy a longer tool or holder for the low side features.',
    'gauge length of at least',
  ),
  'raise-fixture': take(
    'Higher fixture',
    'Raise the part on its fixture, so that the tool reaches its low side features.',
    'raised to at least',
  ),
  'move-aside': take(
    'Tool moved aside before tilting',
    'Move the tool aside before the table tilts; the work must not pass under it. Write it into the program and prove it out dry.',
    'moved aside by at least',
  ),
  tailstock: take(
    'Tailstock or steady',
    'Carry the far end of long work in a tailstock or a steady.',
    'length from the faceplate',
  ),
  'spindle-probe': take(
    'Spindle probe',
    'Find the rotation centers with a spindle probe instead of by hand.',
    'error that is left',
  ),
  'tool-center-point': take('Tool center point control', 'Order the machine with tool center point control.'),
  'rotating-work-offset': take('Rotating work offset', 'Order the machine with a rotating work offset.'),
  'tilted-work-plane': take('Tilted work plane', 'Order the machine with a tilted work plane.'),
  'look-ahead': take('Look-ahead contouring', 'Order the machine with look-ahead contouring.'),
  'axis-drives': take(
    'Axis drives',
    'Order the machine with a drive for every rotary axis.',
    'drives to add',
  ),
  transformer: take(
    'Transformer',
    'Feed the machine through a transformer to its voltage; an electrician chooses and fits it.',
    'connected load',
  ),
  'phase-converter': take(
    'Phase converter',
    'Feed the machine through a phase converter that gives the phases and the voltage of the machine; an electrician chooses and fits it.',
    'connected load',
  ),
  'stays-on': take(
    'The rotary stays on',
    'Nothing in the shop is sure to lift it, so leave it on the table: three-axis work has to live beside it, and riggers put it on once.',
  ),
};
