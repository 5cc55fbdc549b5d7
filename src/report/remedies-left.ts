import type { Machine, Rotary } from '../catalog/catalog.ts';
import type { Arrangement, Decision, Remedy } from '../rules/decision.ts';
import type { CheckAt } from './checks-at.ts';

/** What a remedy is looked for in. */
interface Around {
  readonly arrangement: Arrangement;
  readonly machine: Machine | undefined;
  readonly rotary: Rotary | undefined;
  readonly decision: Decision;
}

type Exists = (around: Around) => boolean;

const addition =
  (kind: 'lowered-table' | 'column-spacer'): Exists =>
  ({ arrangement, machine }) =>
    !arrangement.clearance.includes(kind) && machine?.clearance.some((each) => each.kind === kind) === true;

const plate =
  (why: 'adapter' | 'riser'): Exists =>
  ({ arrangement }) =>
    arrangement.mounting !== 'built-in' && !arrangement.plates.some((each) => each.why === why);

const more = (known: number | 'unknown' | null, there: number | 'unknown' | null | undefined): boolean =>
  known !== 'unknown' && known !== null && (typeof there !== 'number' || known > there);

const larger: Exists = ({ decision, machine, arrangement }) =>
  decision.inputs.answers.shop.machine !== arrangement.machine &&
  decision.inputs.catalog.machines.some(
    ({ id, travel, price }) =>
      id !== machine?.id &&
      (travel.some((length, axis) => more(length, machine?.travel[axis])) || more(price, machine?.price)),
  );

/** Remedies that the catalog must offer, or that may be in use already. Every other one is the shop's own to take. */
const EXISTS: Readonly<Partial<Record<Remedy, Exists>>> = {
  'lowered-table': addition('lowered-table'),
  'column-spacer': addition('column-spacer'),
  riser: plate('riser'),
  'adapter-plate': plate('adapter'),
  'other-mounting': ({ rotary }) => rotary !== undefined && otherMountings(rotary),
  'larger-rotary': ({ decision, rotary, machine }) => {
    const swing = rotary?.swing ?? machine?.builtIn?.swing;
    return decision.inputs.catalog.rotaries.some((row) => row.id !== rotary?.id && more(row.swing, swing));
  },
  // where there is no tilt axis at all, it is the kind that has to be another one
  'more-tilt': ({ decision, rotary, machine }) => {
    const tilt = (rotary ?? machine?.builtIn)?.tilt;
    if (tilt == null || tilt === 'unknown') return false;
    const tables = [
      ...decision.inputs.catalog.rotaries,
      ...decision.inputs.catalog.machines.map((row) => row.builtIn),
    ];
    return tables.some((each) => greatestTilt(each?.tilt) > greatestTilt(tilt));
  },
  'larger-machine': larger,
  'stronger-spindle': larger,
  'other-class': ({ decision, arrangement }) =>
    decision.inputs.catalog.rotaries.some((row) => row.class !== arrangement.class),
  // a probe that is offered was looked at before the check failed
  'spindle-probe': () => false,
  // so was a tailstock that the rotary has
  tailstock: ({ rotary }) => rotary !== undefined && rotary.tailstock === null,
};

const greatestTilt = (tilt: Rotary['tilt'] | undefined): number =>
  tilt == null || tilt === 'unknown' ? 0 : Math.max(...tilt.map(Math.abs));

const otherMountings = ({ hold }: Rotary): boolean => hold === 'unknown' || Object.keys(hold).length > 1;

/** The remedies of a check that exist in this catalog and are not in use yet, the easiest first. */
export function remediesLeft(
  decision: Decision,
  arrangement: Arrangement,
  { result }: CheckAt,
): readonly Remedy[] {
  const { machines, rotaries } = decision.inputs.catalog;
  const around: Around = {
    arrangement,
    machine: machines.find(({ id }) => id === arrangement.machine),
    rotary: rotaries.find(({ id }) => id === arrangement.rotary),
    decision,
  };
  return result.remedies.filter((remedy) => EXISTS[remedy]?.(around) ?? true);
}
