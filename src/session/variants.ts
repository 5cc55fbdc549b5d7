import { sameName } from './answer.ts';
import { comeBack, detour } from './move.ts';
import { refused, type Session, type Step, type Variant } from './session.ts';
import { dropTrial, keepTrial, OPEN, replyAtTrial, withoutTrial } from './trial.ts';
import { RESULT, TRIAL, VARIANTS } from './walk.ts';
import type { World } from './world.ts';

export const MOST_VARIANTS = 3;
const LONGEST_NAME = 24;

/** What the answers of the interview are called beside the variants. */
export const PRESENT = 'Present answers';

/** Said where there is none. */
export const NO_VARIANT = 'There is no variant yet: at the result, try another answer and give it a name.';

/** Asks for a name, or takes it: what is tried stays under it, and the answers of the interview are as before. */
export function nameTrial(session: Session, name: string | null): Step {
  const { trial, variants } = session;
  if (trial === null) return refused(session, name ?? '', 'Nothing is tried now that could get a name.');
  if (trial.of === null && variants.length >= MOST_VARIANTS) {
    const names = variants.map((each) => each.name).join(', ');
    const why = `There are three variants already (${names}): remove one first, or keep or drop this one.`;
    return refused(session, name ?? '', why);
  }
  return name === null ? [detour(session, { at: 'naming' }), []] : replyAtNaming(session, name);
}

/** A variant that is looked at can be given its own name again: it then says what is tried now. */
export function replyAtNaming(session: Session, text: string): Step {
  const { trial, variants, kept } = session;
  if (trial === null) return [comeBack(session, RESULT), []];
  const typed = text.trim().replace(/\s+/g, ' ');
  const name = typed === '' && trial.of !== null ? trial.of : typed;
  const why = faultOf(name, variants, trial.of);
  if (why !== null) return refused(session, text, why);
  const own = variants.findIndex((each) => sameName(each.name, name));
  if (own < 0 && variants.length >= MOST_VARIANTS) {
    return refused(session, text, `There are three variants already: take the name ${trial.of}.`);
  }
  const variant: Variant = { name, kept };
  const more = own < 0 ? [...variants, variant] : variants.with(own, variant);
  const back = { ...withoutTrial(session), variants: more };
  const shown = back.at.at === 'variants' ? back : detour(back, VARIANTS);
  const words = `${name} stays as a variant; the answers of the interview are as they were.`;
  return [{ ...shown, note: { kind: 'said', words } }, [{ kind: 'save' }]];
}

function faultOf(name: string, variants: readonly Variant[], of: string | null): string | null {
  if (!/\p{L}/u.test(name)) return 'Type a name for it with a letter in it, such as: Smaller budget.';
  if (name.length > LONGEST_NAME) return `A name has up to ${LONGEST_NAME} characters: type a shorter one.`;
  const twin = variants.find((each) => sameName(each.name, name));
  if (sameName(name, PRESENT) || (twin !== undefined && twin.name !== of)) {
    return `"${name}" is taken already: type another name.`;
  }
  return null;
}

/** A variant by its number, its name, or the beginning of its name. */
function variantNamed({ variants }: Session, text: string): Variant | null {
  const typed = text.trim();
  const exact = variants.find((each) => sameName(each.name, typed));
  if (exact !== undefined) return exact;
  if (/^\d+$/.test(typed)) return variants[Number(typed) - 1] ?? null;
  const near = variants.filter((each) => each.name.toLowerCase().startsWith(typed.toLowerCase()));
  const [first] = near;
  return near.length === 1 && first !== undefined ? first : null;
}

function noSuch(session: Session, text: string): Step {
  const { variants } = session;
  if (variants.length === 0) return refused(session, text, NO_VARIANT);
  const names = variants.map((each, index) => `${index + 1} ${each.name}`).join(', ');
  return refused(session, text, `Which variant? Type its number or its name: ${names}.`);
}

/** Looks at a variant as if it were tried just now: it can be changed, kept, or left as it is. */
export function lookAt(session: Session, text: string): Step {
  const variant = variantNamed(session, text);
  if (variant === null) return noSuch(session, text);
  if (session.trial !== null) {
    return refused(session, text, 'Something is being tried: keep it, drop it, or give it a name first.');
  }
  const { kept, at, detours, trail } = session;
  const trial = { before: { kept, at, detours, trail }, of: variant.name };
  return [{ ...session, kept: variant.kept, trial, at: TRIAL, detours: [] }, []];
}

/** The answers of the variant become those of the interview. */
export function keepVariant(session: Session, text: string): Step {
  const [looked] = lookAt(session, text);
  return looked.note?.kind === 'error' ? [looked, []] : keepTrial(looked);
}

/** Takes a variant out; whoever looks at it goes back. */
export function removeVariant(session: Session, text: string): Step {
  const variant = variantNamed(session, text);
  if (variant === null) return noSuch(session, text);
  const [back] = session.trial?.of === variant.name ? dropTrial(session) : [session];
  const left = { ...back, variants: session.variants.filter((each) => each !== variant) };
  const isEmpty = left.at.at === 'variants' && left.variants.length === 0;
  const shown = isEmpty ? comeBack(left, RESULT) : left;
  const words = `${variant.name} is removed.`;
  return [{ ...shown, note: { kind: 'said', words } }, [{ kind: 'save' }]];
}

/** `look 1`, `keep Cheap`, `remove 2`; a number or a name alone looks at it. */
export function replyAtVariants(session: Session, text: string): Step {
  const [, word = '', which = ''] = /^\s*(look|keep|remove)\s+(.*?)\s*$/i.exec(text) ?? [];
  switch (word.toLowerCase()) {
    case 'keep':
      return keepVariant(session, which);
    case 'remove':
      return removeVariant(session, which);
    default:
      return lookAt(session, word === '' ? text : which);
  }
}

/** `name Smaller budget`, `remove`; all else is about what is tried. */
export function replyWhileTried(session: Session, text: string, world: World): Step {
  const [, name] = /^\s*name\b\s*(.*)$/is.exec(text) ?? [];
  if (name !== undefined) return nameTrial(session, name.trim() === '' ? null : name);
  const of = session.trial?.of ?? null;
  if (of !== null && /^\s*remove\s*$/i.test(text)) return removeVariant(session, of);
  return replyAtTrial(session, text, world);
}

/** A variant that is only looked at is left as it is; what is tried has to be kept or dropped. */
export function leftTrial(session: Session): Session {
  const { trial, variants, kept } = session;
  const looked = variants.find(({ name }) => name === trial?.of);
  if (looked !== undefined && JSON.stringify(looked.kept) === JSON.stringify(kept))
    return withoutTrial(session);
  return { ...session, note: { kind: 'said', words: OPEN } };
}
