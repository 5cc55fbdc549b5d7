import { CHECKS } from '../src/rules/checks/index.ts';
import type { Check } from '../src/rules/judging/check.ts';
import { judgeExample } from '../test/rules/example-shop.ts';

/** Turns the sense of every check round and shows which of its examples notice. Exit 1 where none does. */

const turned = (check: Check): Check => ({
  ...check,
  sense: check.sense === 'at-most' ? 'at-least' : 'at-most',
});

let silent = 0;
for (const check of CHECKS) {
  const red = check.examples.flatMap(({ what, given, verdict }) => {
    const found = judgeExample(turned(check), given).verdict;
    return found === verdict ? [] : [`${what}: ${verdict} became ${found}`];
  });
  if (red.length === 0) silent += 1;
  process.stdout.write(
    `${red.length === 0 ? 'SILENT' : 'red   '} ${check.id}: ${red[0] ?? 'no example notices'}\n`,
  );
}
process.stdout.write(
  `${CHECKS.length - silent} of ${CHECKS.length} checks turn an example red when their sense is turned round\n`,
);
process.exitCode = silent === 0 ? 0 : 1;
