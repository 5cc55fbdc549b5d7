import { Document, isMap, isSeq, visit } from 'yaml';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from './answers.ts';
import { kindOf } from './answers-schema-assume.ts';
import { ASSUMPTION_GROUPS, ASSUMPTIONS, type Assumption, type AssumptionGroup } from './assumptions.ts';
import { partToFile } from './write-answers-part.ts';
import { type Plain, writerIn } from './write-answers-values.ts';

export interface WrittenAnswers {
  /** plain data, as it would be read from the text */
  readonly data: Readonly<Record<string, unknown>>;
  /** YAML */
  readonly text: string;
}

/**
 * Answers as an answers file in mm or inches. Reading it back gives equal answers. What is not known is written as
 * `unknown`, so that the file can be filled in; a section of which nothing is known is left out.
 */
export function answersToFile(answers: Answers, { units }: { readonly units: LengthUnits }): WrittenAnswers {
  const data = plainAnswers(answers, units);
  return { data, text: toYaml(data, units) };
}

function plainAnswers(answers: Answers, units: LengthUnits): Plain {
  const { length, mass } = writerIn(units);
  const { format, currency, parts, tools, shop, work, money, control, matters, assume } = answers;
  const { vise } = work;
  const sections: Plain = {
    tools: {
      shortest: length(tools.shortest),
      longest: length(tools.longest),
      largestCutter: length(tools.largestCutter),
    },
    shop: {
      ...shop,
      bay: shop.bay.map(length),
      ceiling: length(shop.ceiling),
      doorway: { width: length(shop.doorway.width), height: length(shop.doorway.height) },
      doorSill: length(shop.doorSill),
      lifting:
        shop.lifting === 'unknown'
          ? 'unknown'
          : // the kind first, however the answers came about
            shop.lifting.map(({ by, ...means }) =>
              withoutUnknown({
                by,
                ...means,
                capacity: mass(means.capacity),
                hookHeight: length(means.hookHeight),
                slingHeight: length(means.slingHeight),
                rigging: mass(means.rigging),
                loadCenter: length(means.loadCenter),
                reach: length(means.reach),
                from: length(means.from),
                lift: length(means.lift),
              }),
            ),
    },
    work: {
      ...work,
      vise: { width: length(vise.width), length: length(vise.length), height: length(vise.height) },
    },
    money: { ...money },
    control: { ...control },
  };
  return {
    format,
    units,
    ...(currency === 'unknown' ? {} : { currency }),
    parts: parts.map((part) => partToFile(part, units)),
    ...Object.fromEntries(Object.entries(sections).filter(([, section]) => saysSomething(section))),
    matters: [...matters],
    ...(Object.keys(assume).length === 0 ? {} : { assume: assumeToFile(assume, units) }),
  };
}

function assumeToFile(assume: Answers['assume'], units: LengthUnits): Plain {
  const groups = Object.keys(ASSUMPTION_GROUPS) as AssumptionGroup[];
  const { coupling } = assume.handLift ?? {};
  return {
    ...writtenBack(ASSUMPTIONS, assume, units),
    ...Object.fromEntries(
      groups.flatMap((group) => {
        const within = { ...writtenBack(ASSUMPTION_GROUPS[group], assume[group] ?? {}, units) };
        if (group === 'handLift' && coupling !== undefined) within.coupling = coupling;
        return Object.keys(within).length === 0 ? [] : [[group, within]];
      }),
    ),
  };
}

/** The numbers that were given, in the units of the file, in the order of the list. */
function writtenBack(
  list: Readonly<Record<string, Assumption>>,
  given: Readonly<Record<string, unknown>>,
  units: LengthUnits,
): Record<string, unknown> {
  const { length } = writerIn(units);
  const entries = Object.entries(list).flatMap(([name, { unit }]): [string, unknown][] => {
    const value = given[name];
    if (typeof value !== 'number') return [];
    return [[name, kindOf(unit) === 'length' ? length(value) : value]];
  });
  return Object.fromEntries(entries);
}

const withoutUnknown = (plain: Plain): Plain =>
  Object.fromEntries(Object.entries(plain).filter(([, value]) => value !== 'unknown'));

/** Whether anything in a section is known. */
function saysSomething(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return value !== 'unknown';
  if (Array.isArray(value) && value.length === 0) return true;
  return Object.values(value).some(saysSomething);
}

const HEADS: Readonly<Record<LengthUnits, string>> = {
  mm: ' Numbers without a unit: mm, kg. unknown: not known. [lo, hi]: somewhere between.',
  inch: ' Numbers without a unit: inches, pounds. unknown: not known. [lo, hi]: somewhere between.',
};

/** YAML with lists and small maps on one line. */
function toYaml(data: Plain, units: LengthUnits): string {
  const document = new Document(data, null, { aliasDuplicateObjects: false });
  document.commentBefore = HEADS[units];
  visit(document, {
    Collection(_key, node) {
      const inside: readonly unknown[] = isMap(node)
        ? node.items.map(({ value }) => value)
        : isSeq(node)
          ? node.items
          : [];
      const flat = !inside.some((each) => isMap(each) || isSeq(each));
      if (flat && (isSeq(node) || inside.length <= 4)) node.flow = true;
    },
  });
  return document.toString({ lineWidth: 110, flowCollectionPadding: true });
}
