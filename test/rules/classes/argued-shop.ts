/** The decision of the example shop with the changes of one example: it belongs to the explanations, which print it. */
export { decisionOfRule as decisionOf } from '../../../src/teaching/examples/example-decision.ts';
