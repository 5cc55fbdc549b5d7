export type ColorWanted = 'auto' | 'always' | 'never';

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Whether to use color: what was asked for, else FORCE_COLOR, else NO_COLOR, else whether the terminal has any.
 * Example: colorWanted('auto', { NO_COLOR: '1' }) → false.
 */
export function usesColor(wanted: ColorWanted, env: Environment): boolean {
  if (wanted !== 'auto') return wanted === 'always';
  const forced = env.FORCE_COLOR;
  if (forced !== undefined && forced !== '') return forced !== '0' && forced !== 'false';
  if (env.NO_COLOR !== undefined && env.NO_COLOR !== '') return false;
  return env.TERM !== 'dumb';
}

/** Settles, before what draws is loaded, what it would otherwise guess: color, and that somebody is watching. */
export function settleEnvironment(color: boolean, env: NodeJS.ProcessEnv = process.env): void {
  env.FORCE_COLOR = color ? '1' : '0';
  // with both there would be a warning, in the middle of the screen
  delete env.NO_COLOR;
  delete env.NODE_DISABLE_COLORS;
  // the sixteen colors of the user's own theme, not the millions
  delete env.COLORTERM;
  env.CI = 'false';
  env.CONTINUOUS_INTEGRATION = 'false';
  env.INK_SCREEN_READER = 'false';
}
