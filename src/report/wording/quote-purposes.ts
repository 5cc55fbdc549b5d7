/** What a value is asked for where no check hangs on it. */
export interface Purpose {
  readonly serves: string;
  /** it is about standing and wiring the machine: not asked of one that stands there already */
  readonly stands: boolean;
  /** only of a machine that has a table of its own to put a rotary on */
  readonly table: boolean;
}

const stands = (serves: string): Purpose => ({ serves, stands: true, table: false });

/** Asked of every machine, by its path in the row. */
export const MACHINE_PURPOSES: Readonly<Record<string, Purpose>> = {
  'table.height': { serves: 'lifting the rotary on', stands: false, table: true },
  'footprint[0]': stands('the place where it stands'),
  'footprint[1]': stands('the place where it stands'),
  'footprint[2]': stands('the ceiling'),
  'service.left': stands('the place where it stands'),
  'service.right': stands('the place where it stands'),
  'service.front': stands('the place where it stands'),
  'service.rear': stands('the place where it stands'),
  'shipping[0]': stands('the way in'),
  'shipping[1]': stands('the doorway'),
  'shipping[2]': stands('the doorway'),
  mass: stands('the floor and the rigger'),
  'power.kVA': stands('the electrician'),
  'power.volts': stands('the electrician'),
  'power.phases': stands('the electrician'),
  'air.flow': stands('the compressor'),
  'air.bar': stands('the compressor'),
  price: stands('the price'),
};

/** Asked of every rotary, likewise. */
export const ROTARY_PURPOSES: Readonly<Record<string, { readonly serves: string }>> = {
  housing: { serves: 'what the tool must not touch' },
  mass: { serves: 'lifting it on and off' },
  height: { serves: 'lifting it on and off' },
  liftingPoints: { serves: 'lifting it on and off' },
  'air.bar': { serves: 'the compressor' },
  price: { serves: 'the price' },
};
