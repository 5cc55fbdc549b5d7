import type { Beside } from '../../rules/beside.ts';
import { sideBySide } from '../sections/side-by-side.ts';
import { variantsTitle, whatIf } from '../sections/what-if.ts';
import { sideBySideOf, triedDecision } from '../side-by-side.ts';
import { inFile } from './in-file.ts';
import { type TextLook, textLines } from './text-blocks.ts';

/** What is tried against the answers of the interview, for a screen: two columns, the interview first. */
export function whatIfLines(beside: Beside, look: TextLook): readonly string[] {
  const whole = triedDecision(beside);
  return whole === undefined ? [] : textLines(whatIf(whole), whole, look);
}

/** Variants side by side, for a screen. */
export function sideBySideLines(beside: Beside, look: TextLook): readonly string[] {
  const whole = sideBySideOf(beside);
  return whole === undefined ? [] : textLines(sideBySide(whole), whole, look);
}

/** Variants side by side as a paper, as the name of the file asks for. Ends with one line break. */
export function variantsInFile(beside: Beside, file: string): string {
  const whole = sideBySideOf(beside);
  if (whole === undefined) return '';
  return inFile([...variantsTitle(), ...sideBySide(whole)], whole, file);
}
