import type { Explained } from '../explained.ts';

export const TOPIC_KINDS = [
  'check',
  'stage',
  'class rule',
  'route rule',
  'feature',
  'assumption',
  'term',
] as const;
export type TopicKind = (typeof TOPIC_KINDS)[number];

/** Something that can be explained. */
export interface Topic {
  readonly kind: TopicKind;
  /** as it is asked for */
  readonly id: string;
  readonly title: string;
  readonly explain: () => Explained;
}
