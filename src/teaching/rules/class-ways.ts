import type { ClassRule } from '../../rules/classes/rule.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { RotaryCase } from '../../rules/judging/case.ts';
import type { Value } from '../../rules/judging/value.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { neededWay, type SizesOf, shareWanted, shareWay } from './needed-way.ts';
import type { RuleGround } from './rule-ground.ts';
import { plainLine, type RuleWay } from './rule-way.ts';
import { SHOP_WAYS } from './shop-ways.ts';
import { circles, masses, momentCarried, moments, offered, tilts } from './sizes.ts';
import { joined, line, type Stretch } from './stretch.ts';

/** A share of the hours: which families count is what the rule says of them. */
const shareOfHours =
  (limit: 'plain' | 'nearly all'): RuleWay =>
  (of, rule) => {
    const parts = rule.number(of)?.parts;
    if (parts === undefined) return null;
    const { share, number: words } = CLASS_RULE_LESSONS[rule.id];
    return joined(
      shareWay(of, ({ name }) => parts.includes(name) === (share === 'named'), words),
      limit === 'plain' ? plainLine(of, rule) : shareWanted(of, 'nearly all', 'L'),
    );
  };

interface Capacity {
  readonly sizes: SizesOf;
  /** the line, as L */
  readonly limit: (of: RuleGround, rule: ClassRule) => Stretch;
}

/** The most that any rotary of the class offers. */
const most =
  (read: (table: RotaryCase) => Value): Capacity['limit'] =>
  (of, rule) =>
    offered(of, read, {
      gives: 'L',
      unit: rule.unit,
      words: CLASS_RULE_LESSONS[rule.id].limit,
      which: 'max',
    });

const SWING: Capacity = { sizes: circles, limit: most(({ swing }) => swing) };
const TILT: Capacity = { sizes: tilts, limit: most(({ tiltGreatest }) => tiltGreatest) };
const MASS: Capacity = { sizes: masses, limit: most(({ payloadTilted }) => payloadTilted) };
const MOMENT: Capacity = { sizes: moments, limit: momentCarried };

/** What a share of the hours asks for, against what the class offers. */
const asked =
  ({ sizes, limit }: Capacity, which: 'least' | 'nearly all'): RuleWay =>
  (of, rule) =>
    of.families.length === 0
      ? null
      : joined(
          sizes(of),
          shareWanted(of, which, 'w'),
          neededWay(of, {
            gives: 'N',
            unit: rule.unit,
            words: CLASS_RULE_LESSONS[rule.id].number,
            wanted: 'w',
          }),
          limit(of, rule),
        );

const oversized: RuleWay = (of, rule) =>
  of.families.length === 0 || of.tables.length === 0
    ? null
    : joined(
        circles(of),
        shareWanted(of, 'nearly all', 'w'),
        neededWay(of, {
          gives: 'D',
          unit: 'mm',
          words: 'circle that nearly all of the work asks for',
          wanted: 'w',
        }),
        offered(of, ({ swing }) => swing, {
          gives: 'S',
          unit: 'mm',
          words: 'least swing of this kind',
          which: 'min',
        }),
        line('N', '', CLASS_RULE_LESSONS[rule.id].number, 'S/D'),
        plainLine(of, rule),
      );

/** Nobody has to be held here: sizes of all, and where the large and the small ones begin. */
const spread: RuleWay = (of, rule) => {
  if (of.families.length < 2) return null;
  const at = (gives: string, wanted: string, words: string): Stretch =>
    neededWay(of, { gives, unit: 'mm', words, wanted, musts: false });
  return joined(
    circles(of),
    at('D_l', '0.9', 'circle that nine tenths of the hours ask for'),
    at('D_s', '0.1', 'circle that one tenth of the hours asks for'),
    line('N', '', CLASS_RULE_LESSONS[rule.id].number, 'max(1, D_l/D_s)'),
    plainLine(of, rule),
  );
};

/** How each rule comes to its number and its line. A new id does not compile without. */
export const CLASS_RULE_WAYS: Readonly<Record<ClassRuleId, RuleWay>> = {
  'sides-tilt': shareOfHours('plain'),
  'sides-some-tilt': shareOfHours('nearly all'),
  'sides-around': shareOfHours('nearly all'),
  'tilt-used': shareOfHours('plain'),
  'tilt-idle': shareOfHours('plain'),
  'tilt-beyond': asked(TILT, 'least'),
  'tilt-short': asked(TILT, 'nearly all'),
  'tilt-reaches': asked(TILT, 'nearly all'),
  'swing-beyond': asked(SWING, 'least'),
  'swing-short': asked(SWING, 'nearly all'),
  'swing-holds': asked(SWING, 'nearly all'),
  'swing-oversized': oversized,
  'mass-beyond': asked(MASS, 'least'),
  'mass-short': asked(MASS, 'nearly all'),
  'mass-holds': asked(MASS, 'nearly all'),
  'moment-short': asked(MOMENT, 'nearly all'),
  'moment-holds': asked(MOMENT, 'nearly all'),
  'strength-beyond': shareOfHours('plain'),
  'strength-short': shareOfHours('nearly all'),
  'moving-stiff': shareOfHours('plain'),
  'moving-one-support': shareOfHours('plain'),
  'moving-indexed': shareOfHours('plain'),
  positional: shareOfHours('plain'),
  'bar-fits': shareOfHours('plain'),
  'bar-little': shareOfHours('plain'),
  'nose-takes-chucks': shareOfHours('plain'),
  'nose-missing': shareOfHours('plain'),
  'spread-wide-open': spread,
  'spread-wide-closed': spread,
  'spread-narrow': spread,
  ...SHOP_WAYS,
};
