import { machine } from '../../inputs/machine.ts';
import { assume } from '../../inputs/setting.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { rises, term, turnsAt } from '../../judging/term.ts';
import { standsAlready } from '../../sides/owned.ts';
import { needsInput, theInput } from '../../sides/single.ts';

/** A converter or transformer is as large as the load that hangs on it. */
const asLargeAsTheLoad = { all: [], amount: needsInput(['machine'], machine.kVA), unit: 'kVA' } as const;

export const power = defineCheck({
  id: 'power',
  stage: 'shop',
  about: 'arrangement',
  unit: 'kVA',
  sense: 'at-most',
  applies: (of) => !standsAlready(of),
  comparisons: [
    {
      what: 'connected load',
      need: needsInput(['machine'], machine.kVA),
      have: theInput([], site.kVA),
    },
    {
      what: 'phases',
      unit: '',
      need: needsInput(['machine'], machine.phases),
      have: theInput([], site.phases),
      easings: [{ measure: 'phase-converter', ...asLargeAsTheLoad }],
      secondary: true,
    },
    {
      what: 'voltage',
      unit: 'V',
      // a phase converter is ordered for the voltage of the machine
      when: (of) => of.shop.site.phases.high >= of.machine.phases.low,
      need: greatest(['machine'], () => [
        term(
          'difference of the voltages',
          {
            machine: turnsAt(machine.volts, (of) => [of.supply ?? 0]),
            supply: turnsAt(site.volts, (of) => [of.machine ?? 0]),
          },
          (of) => Math.abs(of.machine - of.supply),
        ),
      ]),
      have: least(['machine'], () => [
        term(
          'difference allowed',
          { machine: rises(machine.volts), share: rises(assume.voltageShare) },
          (of) => of.machine * of.share,
        ),
      ]),
      easings: [{ measure: 'transformer', ...asLargeAsTheLoad }],
      secondary: true,
    },
  ],
  // what is free in the panel is for an electrician to say
  advisory: (of) => of.shop.site.silent.power,
  formula:
    'connected load ≤ supply; amps 1000·S/(√3·U), on one phase 1000·S/U; other phases or voltage: converter, transformer',
  source: 'definition of apparent power; voltage within a tenth: IEC 60204-1, from memory',
  remedies: ['larger-supply', 'smaller-machine'],
  examples: [
    {
      what: '28 kVA on a supply of 28 kVA, 400 V, three phases',
      given: { shop: { power: { kVA: 28, volts: 400, phases: 3 } } },
      verdict: 'holds',
      need: 28,
      have: 28,
    },
    {
      what: 'a supply of 20 kVA',
      given: { shop: { power: { kVA: 20, volts: 400, phases: 3 } } },
      verdict: 'fails',
      need: 28,
      have: 20,
    },
    {
      what: 'a supply with one phase',
      given: { shop: { power: { kVA: 40, volts: 230, phases: 1 } } },
      verdict: 'holds if',
      need: 3,
      have: 1,
    },
    {
      what: 'three phases at 480 V for a machine at 400 V',
      given: { shop: { power: { kVA: 40, volts: 480, phases: 3 } } },
      verdict: 'holds if',
      need: 80,
      have: 40,
    },
    {
      what: 'three phases at 415 V do as they are',
      given: { shop: { power: { kVA: 40, volts: 415, phases: 3 } } },
      verdict: 'holds',
      need: 28,
      have: 40,
    },
    {
      what: 'a supply of which nobody knows what is free',
      given: { shop: { power: { kVA: 'unknown', volts: 400, phases: 3 } } },
      verdict: 'open',
    },
  ],
});
