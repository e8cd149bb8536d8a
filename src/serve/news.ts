/** What happens to patterns and site -> told to every page that listens, as server-sent events (HTML Living Standard, 9.2). */

import type { ServerResponse } from 'node:http';

/** A pattern was saved, or the site was built anew. A page that begins to listen is told how far things are. */
export type News = 'saved' | 'built';

/** Something that stands between may end a connection that is silent for long. */
const BREATH_MS = 25_000;

export class NewsStand {
  private readonly listeners = new Set<ServerResponse>();
  private builds = 0;
  private saves = 0;

  /** `sitting` stands for this run of the server: a page of an earlier one has an old token. */
  constructor(private readonly sitting: string) {}

  /** How far things are. It is written into each page, so that one that listens too late knows what it missed. */
  stamp(): string {
    return `${this.sitting} ${this.builds} ${this.saves}`;
  }

  listen(response: ServerResponse): void {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write(`retry: 1000\n${event('here', this.stamp())}`);
    this.listeners.add(response);
    const breath = setInterval(() => response.write(': \n\n'), BREATH_MS);
    response.on('close', () => {
      clearInterval(breath);
      this.listeners.delete(response);
    });
  }

  tell(news: News): void {
    if (news === 'built') this.builds++;
    else this.saves++;
    for (const response of this.listeners) response.write(event(news, this.stamp()));
  }
}

function event(name: string, data: string): string {
  return `event: ${name}\ndata: ${data}\n\n`;
}
