/** A mistake in the made-up market: the cell of a key in a row, as the spreadsheet counts. */
interface Planted {
  readonly list: 'rotaries' | 'machines';
  readonly row: number;
  /** null: the row as a whole */
  readonly key: string | null;
  readonly cell: string;
}

const rotary = (row: number, key: string | null, cell: string): Planted => ({
  list: 'rotaries',
  row,
  key,
  cell,
});
const machine = (row: number, key: string | null, cell: string): Planted => ({
  list: 'machines',
  row,
  key,
  cell,
});

/** The demo has collet indexers first, then single axes: what tilts or does not, hangs on the row. */
export const PLANTED: readonly Planted[] = [
  rotary(3, 'swing', 'large'),
  rotary(8, 'mass', '95 mm'),
  rotary(14, 'centerHeight', '-150'),
  rotary(21, 'price', 'on request'),
  rotary(33, 'payload.level', '1,500'),
  rotary(47, 'faceplate', '0'),
  rotary(59, 'class', 'trunion'),
  rotary(70, 'name', ''),
  rotary(82, null, 'the row above again'),
  rotary(95, null, 'the name above'),
  rotary(110, 'speed.rotary', '80 km/h'),
  rotary(128, 'tilt', '110 … -20'),
  rotary(150, 'liftingPoints', '2.5'),
  rotary(171, 'inertia', '#REF!'),
  rotary(204, 'housing', 'see drawing'),
  machine(5, 'travel[0]', '#DIV/0!'),
  machine(17, 'kind', 'lathe'),
  machine(29, 'spindle', 'diagonal'),
  machine(44, 'noseToTable', '610'),
  machine(60, 'power.phases', '5'),
  machine(83, 'table.slots.center', 'perhaps'),
  machine(101, 'features.lookAhead', 'ask the seller'),
  machine(140, 'mass', '=A2*2'),
  machine(222, 'rotaryIncluded', 'Phoenix'),
  machine(301, 'clearance', '75'),
];
