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
  // A page may be made, and something saved or built, before it begins to listen.
  let known = document.currentScript?.dataset.news ?? '';
  const hear = (): void => {
    if (source !== null) return;
    source = new EventSource(NEWS_ADDRESS);
    source.addEventListener('here', ({ data }: MessageEvent<string>) => {
      const missed = { built: known !== '' && ofBuild(known) !== ofBuild(data), saved: known !== data };
      known = data;
      if (missed.built) built();
      if (missed.saved) saved();
    });
    source.addEventListener('open', () => gone(false));
    source.addEventListener('error', () => gone(true));
    for (const [news, act] of Object.entries({ saved, built }))
      source.addEventListener(news, ({ data }: MessageEvent<string>) => {
        known = data;
        act();
      });
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') return hear();
    gone(false);
    source?.close();
    source = null;
  });
  hear();
}

/** Of a server's stamp `sitting builds saves`, the first two. */
function ofBuild(stamp: string): string {
  return stamp.slice(0, stamp.lastIndexOf(' '));
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
