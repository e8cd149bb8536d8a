/** A page -> what on it moved that no reader's own doing moved (Layout Instability, `layout-shift`). */

import type { Page } from 'playwright-core';

export interface Moved {
  readonly value: number;
  /** The elements that moved. */
  readonly what: string;
}

/** From so long after the page began to load. */
export function movedSince(page: Page, sinceMs = 0): Promise<Moved[]> {
  return page.evaluate(`new Promise((done) => {
    const seen = [];
    new PerformanceObserver((list) => {
      for (const one of list.getEntries())
        if (!one.hadRecentInput && one.value > 0 && one.startTime > ${sinceMs})
          seen.push({
            value: one.value,
            what: one.sources.map(({ node }) => node?.nodeName + '.' + node?.className).join(' '),
          });
    }).observe({ type: 'layout-shift', buffered: true });
    setTimeout(() => done(seen), 300);
  })`);
}
