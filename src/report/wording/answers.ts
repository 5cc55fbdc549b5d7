/** A value in words, with the unit that its number has. */
export interface ValueWords {
  readonly words: string;
  readonly unit: string;
}

const value = (words: string, unit = ''): ValueWords => ({ words, unit });

/**
 * Answers that stand in the answers file but are not asked in the interview, by their path without the part's
 * name. What is asked has its words in its question.
 */
export const UNASKED_ANSWER_WORDS: Readonly<Record<string, ValueWords>> = {
  'parts.fill': value('share of the block that is material', 'share'),
  'parts.approaches': value('sides that are cut'),
  'parts.slant': value('slant angle', '°'),
  'parts.undercut': value('undercut angle', '°'),
  'parts.contourCut.diameter': value('cutter diameter of the moving axes', 'mm'),
  'parts.contourCut.teeth': value('teeth of the cutter of the moving axes'),
  'parts.contourCut.ap': value('depth of cut of the moving axes', 'mm'),
  'parts.contourCut.ae': value('width of cut of the moving axes', 'mm'),
  'parts.contourCut.fz': value('feed per tooth of the moving axes', 'mm/tooth'),
  'parts.contourCut.vc': value('cutting speed of the moving axes', 'm/min'),
  'parts.contourCut.interrupted': value('interrupted cut of the moving axes'),
  currency: value('currency'),
};
