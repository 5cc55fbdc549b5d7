import type { Writable } from 'node:stream';
import type { Catalog } from '../../catalog/catalog.ts';
import type { Session } from '../../session/session.ts';
import { say } from './say.ts';

/** What it is about, on which catalog, and what can be typed anywhere. */
export function greet(session: Session, catalog: Catalog, stdout: Writable): void {
  const from =
    session.catalogs.length === 0
      ? 'the demo catalog, which is invented'
      : `the catalog in ${session.catalogs.join(', ')}`;
  const machines = `${catalog.machines.length} machines and ${catalog.rotaries.length} rotaries of ${from}`;
  say(`This interview goes from your parts to a five-axis arrangement: ${machines}.`, stdout);
  if (session.at.at === 'resume') return;
  say(
    'Answer in your own units. "not sure" is an answer everywhere; "back", "why", "review" and "help" work at every prompt.',
    stdout,
  );
}
