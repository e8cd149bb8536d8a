/** What the server tells of patterns and site -> acted on, for as long as the page is looked at. */

import { say } from './ask-server.ts';

const NEWS_ADDRESS = '/.desk/news';

export interface Heard {
  readonly saved: () => void;
  readonly built: () => void;
}

/** A page that nobody looks at does not listen: browsers allow a server only so many connections. It asks when it is seen again. */
export function listen({ saved, built }: Heard): void {
  let source: EventSource | null = null;
  let last: string | null = null;
  const hear = (): void => {
    if (source !== null) return;
    source = new EventSource(NEWS_ADDRESS);
    source.addEventListener('here', ({ data }: MessageEvent<string>) => {
      // Something may have happened while it did not listen.
      const missed = last !== null && last !== data;
      last = data;
      if (missed) built();
      if (missed || sleeping) saved();
      sleeping = false;
    });
    source.addEventListener('open', () => gone(false));
    source.addEventListener('error', () => gone(true));
    source.addEventListener('saved', saved);
    source.addEventListener('built', ({ data }: MessageEvent<string>) => {
      last = `${last?.split(' ')[0]} ${data}`;
      built();
    });
  };
  let sleeping = false;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') return hear();
    sleeping = true;
    gone(false);
    source?.close();
    source = null;
  });
  hear();
}

/** A connection that is lost for a moment comes back by itself, and nobody need know. */
const PATIENCE_MS = 2500;
let waiting = 0;

function gone(is: boolean): void {
  const words = document.querySelector<HTMLElement>('#gone');
  if (words === null) return;
  if (!is) {
    clearTimeout(waiting);
    waiting = 0;
    words.hidden = true;
  } else if (waiting === 0) {
    waiting = window.setTimeout(() => {
      words.hidden = false;
      say(words.textContent ?? '');
    }, PATIENCE_MS);
  }
}
