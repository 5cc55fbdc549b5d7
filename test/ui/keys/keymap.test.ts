import { describe, expect, test } from 'vitest';
import type { World } from '../../../src/session/world.ts';
import { GOING_KEYS } from '../../../src/ui/keys/going-keys.ts';
import { type Key, type NamedKey, named } from '../../../src/ui/keys/key.ts';
import { actionOf, helpHere, shownKeys } from '../../../src/ui/keys/keymap.ts';
import { MOVING_KEYS } from '../../../src/ui/keys/moving-keys.ts';
import { TRIAL_KEYS, TRY_KEYS } from '../../../src/ui/keys/trial-keys.ts';
import { press } from '../../../src/ui/state/press.ts';
import { situationOf } from '../../../src/ui/state/situation.ts';
import type { Ui } from '../../../src/ui/state/ui.ts';
import { VIEW_WORDS } from '../../../src/ui/state/view-words.ts';
import { demoUi, demoWorld } from '../demo-screens.ts';
import { everyPlace, everyQuestion, everyView, goneTo, type Named, typed } from '../every-screen.ts';

const world: World = demoWorld('shop');
const ui = demoUi('shop', world);
const SCREENS: readonly Named[] = [
  ...everyQuestion(ui, world),
  ...everyPlace(ui, world).filter(([, { over }]) => over?.kind !== 'leave'),
  ...everyView(ui, world),
];
const BOUND = new Set(
  [...TRIAL_KEYS, ...MOVING_KEYS, ...TRY_KEYS, ...GOING_KEYS].flatMap(({ keys }) => keys),
);
const keyOf = (name: string): Key =>
  name.length === 1 ? { kind: 'text', text: name } : named(name as NamedKey);

/** How the help writes a key. */
const LABELS: Readonly<Record<string, string>> = {
  '↑': 'up',
  '↓': 'down',
  '←': 'left',
  Enter: 'enter',
  Esc: 'escape',
  'Shift-Tab': 'shift-tab',
  'Page up': 'page-up',
  'Page down': 'page-down',
  Home: 'home',
  End: 'end',
  Space: ' ',
};
const keysOfLabel = (label: string): readonly string[] =>
  /^1-\d$/.test(label)
    ? [...'123456789'].slice(0, Number(label.at(-1)))
    : label === '↑↓'
      ? ['up', 'down']
      : [
          LABELS[label] ??
            label.replace(/^(Ctrl-|\^)(.)$/, (_, __, letter: string) => `ctrl-${letter.toLowerCase()}`),
        ];

describe('in every situation that can be reached', () => {
  test.each(SCREENS)('help names every key that does something, each once: %s', (_, at) => {
    const here = situationOf(at, world);
    const told = helpHere(here)
      .filter(([keys]) => !['While typing', 'Ctrl-C'].includes(keys))
      .flatMap(([keys]) => keys.split(', ').flatMap(keysOfLabel));
    const working = [...BOUND].filter((name) => actionOf(keyOf(name), here) !== null);
    expect([...told].sort()).toEqual([...working].sort());
  });

  test.each(SCREENS)('every key that is shown works, and none is shown twice: %s', (_, at) => {
    const here = situationOf(at, world);
    const shown = shownKeys(here).map(([key]) => key);
    expect(shown).toEqual([...new Set(shown)]);
    const idle = shown.flatMap(keysOfLabel).filter((name) => {
      const [next, requests] = press(at, keyOf(name), world);
      return requests.length === 0 && JSON.stringify(next) === JSON.stringify({ ...at, said: null });
    });
    // at the only row, or at the end of what is read, a key that moves has nowhere to go
    const moves = new Set(['up', 'down', ...'123456789', ' ', 'enter']);
    const views = new Set(Object.values(VIEW_WORDS).map(({ key }) => key));
    expect(
      idle.filter((name) => !moves.has(name) && !(at.session.at.at === 'result' && views.has(name))),
    ).toEqual([]);
  });
});

describe('letters', () => {
  const typing = SCREENS.filter(([, at]) => situationOf(at, world).typing);
  test('are typed on many screens', () => {
    expect(typing.length).toBeGreaterThan(20);
  });
  test.each(typing)('trigger nothing once something is typed: %s', (_, at) => {
    const begun: Ui = typed(at, '1');
    const here = situationOf(begun, world);
    const acting = [...'abcdefghijklmnopqrstuvwxyz?/ 0123456789'].filter(
      (letter) => actionOf({ kind: 'text', text: letter }, here) !== null,
    );
    expect(acting).toEqual([]);
  });
  test.each(typing)('and only ? and / do where nothing is typed: %s', (_, at) => {
    const here = situationOf(typed(at, ''), world);
    const acting = [...'abcdefghijklmnopqrstuvwxyz?/ 0123456789'].filter(
      (letter) => actionOf({ kind: 'text', text: letter }, here) !== null,
    );
    expect(['?', '/'].filter((sign) => acting.includes(sign))).toEqual(acting.toSorted().reverse());
  });
});

describe('rows', () => {
  const question = (id: string): Ui => {
    const place = everyQuestion(ui, world).find(([name]) => name === id)?.[1];
    if (place === undefined) throw new Error(`the demo shop is not asked ${id}`);
    return goneTo(place, place.session.at, world);
  };
  const pressed = (at: Ui, ...texts: readonly string[]): Ui =>
    texts.reduce((now, name) => press(now, keyOf(name), world)[0], at);

  test('y and n highlight Yes and No, and take neither', () => {
    const at = question('must');
    expect([pressed(at, 'y').mark, pressed(at, 'n').mark]).toEqual([0, 1]);
    expect(pressed(at, 'n').session.kept).toEqual(at.session.kept);
  });

  test('in an order a digit gives the highlighted row its place, Space moves it up', () => {
    const at = { ...question('matters'), mark: 3 };
    const fourth = at.chosen[3];
    expect(pressed(at, '1').chosen[0]).toBe(fourth);
    expect([pressed(at, '1').mark, pressed(at, ' ').mark]).toEqual([0, 2]);
    expect(pressed(at, ' ').chosen[2]).toBe(fourth);
    expect(pressed(at, '9').chosen.at(-1)).toBe(fourth);
    const taken = pressed(at, '1', 'enter').session.kept.shop.matters;
    expect(taken).toMatchObject({
      from: 'typed',
      value: ['price', 'coverage', 'viseStations', 'payback', 'floorArea', 'swapHours', 'margin'],
    });
  });

  test('in a list Space marks and takes the mark away; Enter takes what is marked', () => {
    const at = { ...question('approaches'), chosen: [], mark: 0 };
    expect(pressed(at, ' ').chosen).toEqual([0]);
    expect(pressed(at, ' ', ' ').chosen).toEqual([]);
    expect(pressed(at, ' ', 'down', ' ').chosen).toEqual([0, 1]);
  });
});
