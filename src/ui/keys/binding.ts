import type { Place } from '../../session/session.ts';
import type { ResultView } from '../state/ui.ts';
import type { BindingOf } from './keymap-of.ts';
import type { Action, Situation } from './situation.ts';

export type Binding = BindingOf<Action, Situation>;

export const free = ({ over }: Situation): boolean => over === null;
export const letters = (here: Situation): boolean => free(here) && !here.typing;
export const idle = (here: Situation): boolean => free(here) && !here.typed;
export const listed = ({ rows }: Situation): boolean => rows > 0;
export const working = ({ at }: Situation): boolean => at !== 'resume';
export const freely = (here: Situation): boolean => free(here) && working(here);
export const asked = (here: Situation): boolean => free(here) && here.at === 'question';
export const choosing = (here: Situation): boolean => asked(here) && !here.typing;
export const ordering = (here: Situation): boolean => asked(here) && here.input === 'order';
export const deciding = (here: Situation): boolean => asked(here) && here.input === 'yes-no';
export const result = (here: Situation): boolean => letters(here) && here.at === 'result';
export const listing = (view: ResultView, looking: boolean) => (here: Situation) =>
  listed(here) && here.at === 'result' && here.view === view && here.looking === looking;
export const onParts = (here: Situation): boolean => letters(here) && here.at === 'parts';
export const onTrial = (here: Situation): boolean => letters(here) && here.at === 'trial';
export const onVariants = (here: Situation): boolean => letters(here) && here.at === 'variants';
export const overlaid = ({ over }: Situation): boolean =>
  over === 'help' || over === 'why' || over === 'lines' || over === 'explained';
export const reading = (here: Situation): boolean =>
  !listed(here) && (overlaid(here) || result(here) || onTrial(here) || onVariants(here));
export const moving = (here: Situation): boolean => listed(here) || reading(here);
export const lettersBut = (at: Place['at']) => (here: Situation) =>
  letters(here) && working(here) && here.at !== at;
export const freelyBut = (at: Place['at']) => (here: Situation) => freely(here) && here.at !== at;
export const LONG_LIST = 9;
export const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

export const binding = (
  action: Action,
  keys: readonly string[],
  shown: string | null,
  help: string,
  where: Binding['where'],
): Binding => ({ action, keys, shown, help, where });
