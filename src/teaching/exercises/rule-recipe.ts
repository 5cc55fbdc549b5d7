import type { Class } from '../../catalog/catalog.ts';
import type { Recipe, Side } from './recipe.ts';

/**
 * What hangs on a rule. `finding`: what is found of the kind of rotary, since it rules out or speaks against it so that it weighs.
 * `voice`: what the rule itself says; the finding does not hang on it alone.
 */
export type Decides = 'finding' | 'voice';

/** How a rule of the class is brought to decide. Yes: it speaks. */
export interface RuleRecipe extends Recipe {
  readonly decides: Decides;
  /** where that is otherwise while the rule speaks */
  readonly onYes?: 'voice';
  /** the kind that it is asked about; left out: that of the rotary that was drawn */
  readonly ofClass?: (drawn: Class, side: Side) => Class;
}

/** What hangs on a rule that stands on a side of its line. */
export const decidesOn = ({ decides, onYes }: RuleRecipe, side: Side): Decides =>
  side === 'yes' ? (onYes ?? decides) : decides;
