import { aroundTips } from './around-tips.ts';
import { plain } from './known-stack.ts';
import { spindleAt } from './spindle.ts';
import { type Drawn, NOTHING, together } from './stack-shapes.ts';
import type { StackSubject } from './stack-subject.ts';

/** The longest tool above its highest place and the shortest at its lowest, beside each other along the work. */
export function axialTools(subject: StackSubject): Drawn {
  const { decision, part, known, view } = subject;
  const { answers, assume } = decision.inputs;
  const tips = aroundTips(part, known, (plain(answers.tools.largestCutter) ?? 0) / 2);
  if (tips === null) return NOTHING;
  const [low, high] = tips.u;
  const [a, b] = [0.3, 0.7].map((share) => view.sign * (low + (high - low) * share)) as [number, number];
  return together([
    spindleAt(subject, [Math.min(a, b), view.axis + tips.w[1] + assume.approach], 'longest'),
    spindleAt(subject, [Math.max(a, b), view.axis + tips.w[0]], 'shortest'),
  ]);
}
