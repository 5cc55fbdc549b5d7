/** Thrown where a decision is asked for that is still being worked out. */
export class NotYet extends Error {
  constructor() {
    super('this is still being worked out');
  }
}

/** What `work` gives; undefined while a decision that it needs is being worked out. */
export function ready<Result>(work: () => Result): Result | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof NotYet) return undefined;
    throw error;
  }
}
