export const tests: readonly string[];
export const BUNDLED: string;
