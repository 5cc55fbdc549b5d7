import type { Case, MachineCase, PartCase, RotaryCase, ShopCase } from '../judging/case.ts';
import { evaluateSide, type Side } from '../judging/side.ts';
import type { Input } from '../judging/term.ts';
import { derived, known, type Value } from '../judging/value.ts';

type Domain = readonly [low: number, high: number];

/** The part of a case that is about a part. Throws when a check about the arrangement asks for one. */
function partOf(of: Case): PartCase {
  if (of.part === null) throw new Error('a check about the arrangement reads a part');
  return of.part;
}

export const partInput = (
  name: string,
  unit: string,
  domain: Domain,
  read: (part: PartCase) => Value,
): Input => ({
  name,
  unit,
  domain,
  read: (of) => read(partOf(of)),
});

export const rotaryInput = (
  name: string,
  unit: string,
  domain: Domain,
  read: (rotary: RotaryCase) => Value,
): Input => ({ name, unit, domain, read: (of) => read(of.rotary) });

export const machineInput = (
  name: string,
  unit: string,
  domain: Domain,
  read: (machine: MachineCase) => Value,
): Input => ({ name, unit, domain, read: (of) => read(of.machine) });

export const shopInput = (
  name: string,
  unit: string,
  domain: Domain,
  read: (shop: ShopCase) => Value,
): Input => ({
  name,
  unit,
  domain,
  read: (of) => read(of.shop),
});

export const caseInput = (name: string, unit: string, domain: Domain, read: (of: Case) => Value): Input => ({
  name,
  unit,
  domain,
  read,
});

/** What a side comes to, as an input of other terms: its unknowns are taken as independent of theirs. */
export const sideInput = (
  name: string,
  unit: string,
  domain: Domain,
  path: string,
  side: (of: Case) => Side,
): Input => ({
  name,
  unit,
  domain,
  side,
  read: (of) => {
    const value = evaluateSide(side(of), of);
    return derived(value, path, [value]);
  },
});

/** A number that is the same in every case of its kind, e.g. 1 for *offered*. */
export const fixed = (name: string, value: number): Input => ({
  name,
  unit: '',
  domain: [value, value],
  read: () => known(value, name),
});
