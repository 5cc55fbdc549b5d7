/** Of the options and the world around the interview, what decides how it is asked. */
export interface AskedHow {
  readonly options: { readonly plain?: boolean; readonly input?: boolean };
  readonly stdin: { readonly isTTY?: boolean };
  readonly stdout: { readonly isTTY?: boolean };
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * How the interview can be asked; null: not at all.
 * Example: a terminal on both sides, and nothing asked for → 'screen'.
 */
export function interviewMode({
  options: { plain, input },
  stdin,
  stdout,
  env,
}: AskedHow): 'lines' | 'screen' | null {
  if (input === false) return null;
  if (plain === true) return 'lines';
  if (stdin.isTTY !== true || stdout.isTTY !== true) return null;
  if (env.ACCESSIBLE === '1') return 'lines';
  return env.TERM === 'dumb' ? null : 'screen';
}
