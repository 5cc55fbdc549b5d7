import { type Binding, binding, DIGITS, onTrial, onVariants, result } from './binding.ts';

const LOOKED = DIGITS.slice(0, 3);

/** Keys where other answers are tried and held against each other; where two fit, the first takes the key. */
export const TRIAL_KEYS: readonly Binding[] = [
  binding('keep', ['k'], 'keep', 'what is tried becomes the answers of the interview', onTrial),
  binding('drop', ['d'], 'drop', 'every answer as it was before', onTrial),
  binding('what-if', ['i'], 'another', 'another answer more to be tried', onTrial),
  binding('name', ['n'], 'name', 'gives it a name, under which it stays beside the answers', onTrial),
  binding('take-out', ['x'], 'remove', 'takes this variant out', (here) => onTrial(here) && here.ofVariant),
  binding('look', LOOKED, 'look', 'at this variant, to change, keep or remove it', (here) => {
    return onVariants(here) && !here.tries;
  }),
  binding('write-variants', ['p'], 'write', 'asks where to write the table', onVariants),
];

/** Keys of the result that lead there. */
export const TRY_KEYS: readonly Binding[] = [
  binding('what-if', ['i'], 'what if', 'tries another answer, and shows what it changes', result),
  binding('variants', ['l'], 'variants', 'what was tried and given a name, side by side', (here) => {
    return (result(here) || onTrial(here)) && here.variants > 0;
  }),
];
