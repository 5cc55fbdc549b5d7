import { assumptionTopics } from './assumption-topic.ts';
import { checkTopics } from './check-topic.ts';
import { featureTopics } from './feature-topic.ts';
import { classRuleTopics, routeRuleTopics } from './rule-topic.ts';
import { stageTopics } from './stage-topic.ts';
import { termTopics } from './term-topic.ts';
import type { Topic } from './topic.ts';

/** Everything that can be explained, in the order in which it is listed. */
export const TOPICS: readonly Topic[] = [
  ...checkTopics(),
  ...stageTopics(),
  ...classRuleTopics(),
  ...routeRuleTopics(),
  ...featureTopics(),
  ...assumptionTopics(),
  ...termTopics(),
];
