import { arrangementAt, checksAt, firstOfEach, ofCoveredParts, worstFirst } from '../../report/checks-at.ts';
import { picturedArrangement } from '../../report/figures/pictured.ts';
import type { Decision } from '../../rules/decision.ts';
import { screenOf } from '../../session/screen.ts';
import type { World } from '../../session/world.ts';
import { qualified, topicNamed } from '../../teaching/find-topic.ts';
import { termsOfQuestion } from '../../teaching/terms-in.ts';
import { TOPICS } from '../../teaching/topics/index.ts';
import type { Topic } from '../../teaching/topics/topic.ts';
import type { Item } from './items.ts';
import { ready } from './not-yet.ts';
import type { ResultView, Ui } from './ui.ts';

type Shown = Pick<Topic, 'kind' | 'id'> & { readonly state: string };

const known = new Map<string, readonly Item[]>();

/**
 * Everything that can be explained, what the screen is about first: the checks of the arrangement that is looked at with
 * their verdicts, the worst first; the rules that speak; the options; the words of a question.
 */
export function explainItems(ui: Ui, world: World): readonly Item[] {
  const first = shownBy(ui, world);
  const key = first.map(({ kind, id, state }) => `${kind}/${id}/${state}`).join(' ');
  const found = known.get(key);
  if (found !== undefined) return found;
  const names = new Set(first.map(qualified));
  const items = [
    ...first.flatMap((each) => {
      const topic = topicNamed(qualified(each));
      return topic === undefined ? [] : [itemOf(topic, each.state)];
    }),
    ...TOPICS.filter((each) => !names.has(qualified(each))).map((each) => itemOf(each, each.kind)),
  ];
  // what is shown changes with every answer: older lists are not asked for again
  known.clear();
  known.set(key, items);
  return items;
}

const itemOf = (topic: Topic, state: string): Item => ({
  key: qualified(topic),
  label: `${topic.title} (${topic.id})`,
  about: '',
  state,
  act: { do: 'over', over: { kind: 'explained', topic: qualified(topic) } },
});

function shownBy(ui: Ui, world: World): readonly Shown[] {
  const { session, view } = ui;
  if (session.at.at === 'question') {
    const screen = screenOf(session, world);
    if (screen.kind !== 'question') return [];
    return termsOfQuestion(screen).map((id) => ({ kind: 'term', id, state: 'term' }));
  }
  const decision = ready(() => world.decision(session.kept));
  if (decision === undefined || decision === null) return [];
  return ofView(view, ui, decision, world);
}

function ofView(view: ResultView, ui: Ui, decision: Decision, world: World): readonly Shown[] {
  switch (view) {
    case 'kinds':
      return [
        ...rulesThatSpeak('class rule', decision.classes),
        ...rulesThatSpeak('route rule', decision.route.routes),
      ];
    case 'options':
      return decision.features.map(({ feature, need }) => ({ kind: 'feature', id: feature, state: need }));
    case 'stages':
      return decision.stages.map(({ stage }) => ({ kind: 'stage', id: stage, state: 'stage' }));
    default:
      return checksOf(ui, decision, world);
  }
}

type Arguments = readonly { readonly rule: string }[];

/** The rules that speak for or against something, each once. */
function rulesThatSpeak(
  kind: 'class rule' | 'route rule',
  of: readonly { readonly against: Arguments; readonly for: Arguments }[],
): readonly Shown[] {
  const ids = of.flatMap((each) => [...each.against, ...each.for].map(({ rule }) => rule));
  return [...new Set(ids)].map((id) => ({ kind, id, state: kind }));
}

/** The checks of what is looked at, else of what is recommended, else of what comes nearest. */
function checksOf({ looked, session }: Ui, decision: Decision, world: World): readonly Shown[] {
  const at =
    looked === null
      ? picturedArrangement(decision)
      : arrangementAt(ready(() => world.decisionWith(session.kept, looked)) ?? decision, looked);
  if (at === undefined) return [];
  const all = [...worstFirst(ofCoveredParts(at)), ...worstFirst(checksAt(at))];
  return firstOfEach(all).map(({ result }) => ({
    kind: 'check',
    id: result.check,
    state: result.verdict,
  }));
}
