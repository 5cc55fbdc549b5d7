import type { Section } from './question.ts';

/** What each part of the interview is about, as its heading. */
export const SECTION_TITLES: Readonly<Record<Section, string>> = {
  start: 'To begin with',
  parts: 'Shape and work',
  holding: 'How it is held',
  cut: 'Heaviest cut',
  contour: 'Curved surfaces',
  drill: 'Drilling',
  yearly: 'Work in a year',
  tools: 'Your tools',
  building: 'The building',
  supply: 'Power and air',
  lifting: 'Lifting',
  work: 'Beside the rotary',
  money: 'Money',
  programming: 'Programming',
  matters: 'What matters',
};
