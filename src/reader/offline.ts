/**
 * Runs beside the pages of a site: what was fetched of it is kept, and given again where there is no network. The network
 * goes first, so that nobody reads an old row where a mended one can be had.
 */

interface FetchEvent extends Event {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface LastingEvent extends Event {
  waitUntil(done: Promise<unknown>): void;
}
interface Worker {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'fetch', listen: (event: FetchEvent) => void): void;
  addEventListener(kind: 'install' | 'activate', listen: (event: LastingEvent) => void): void;
}

declare const self: Worker;
const worker = self;
const KEPT = 'rowfold pages 1';
/** A network that answers later than this is no use to someone in the middle of a row. */
const PATIENCE_MS = 4000;

worker.addEventListener('install', (event) => event.waitUntil(worker.skipWaiting()));
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { scope } = worker.registration;
  // What begins with a full stop is no page of the site: it belongs to whoever serves it while it is written.
  if (request.method === 'GET' && request.url.startsWith(scope) && !request.url.startsWith(`${scope}.`))
    event.respondWith(answer(request));
});

async function answer(request: Request): Promise<Response> {
  const pages = await caches.open(KEPT);
  const network = fetch(request).then(async (response) => {
    if (response.ok) await pages.put(request, response.clone());
    return response;
  });
  const kept = await pages.match(request, { ignoreVary: true });
  if (kept === undefined) return network;
  const late = new Promise<Response>((resolve) => {
    setTimeout(() => resolve(kept), PATIENCE_MS);
  });
  return Promise.race([network.catch(() => kept), late]);
}
