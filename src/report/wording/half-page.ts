import type { Class } from '../../catalog/catalog.ts';
import type { Decision } from '../../rules/decision.ts';

/** What is bought, for a reader who knows no word of the trade. */
export const PLAIN_CLASS_WORDS: Readonly<Record<Class, string>> = {
  'collet-indexer': 'a small device that holds bars and turns them under the tool',
  'single-axis': 'a device that turns the part about one axis under the tool',
  'single-support': 'a table that tilts and turns the part under the tool',
  trunnion: 'a table in a cradle that tilts and turns the part under the tool',
  'built-in': 'its own table tilts and turns the part under the tool',
};

/** What to do next, in three steps. */
export const NEXT_STEPS: Readonly<Record<Decision['outcome'], readonly [string, string, string]>> = {
  recommended: [
    'First, have the building looked at with the site sheet: floor, power, way in, lifting.',
    'Then send each seller its quote sheet, and have every number and price confirmed in writing.',
    'Before signing, write the acceptance tests, and a first part of your own, into the order.',
  ],
  open: [
    'First, find out what is listed here, the first of it first.',
    'Then put it into the answers and decide again.',
    'Last, ask for quotes, with the quote sheets, once one arrangement is left.',
  ],
  none: [
    'First, look at the nearest misses: which part, size or amount could give way?',
    'Then change that answer, or add more machines and rotaries to the catalog, and decide again.',
    'Until then, order nothing before something passes.',
  ],
};
