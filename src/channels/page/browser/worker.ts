/** Keeps the page itself on the phone, so that it opens with no signal. What is asked of the program goes past it. */
declare const VERSION: string;

type Extended = Event & { waitUntil(work: Promise<unknown>): void };
type Fetched = Extended & { request: Request; respondWith(answer: Promise<Response>): void };
const worker = self as unknown as {
  addEventListener(name: 'install' | 'activate', heard: (event: Extended) => void): void;
  addEventListener(name: 'fetch', heard: (event: Fetched) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  location: Location;
};

const CACHE = `page-${VERSION}`;
const FILES = ['./', 'page.js', 'danger.js', 'page.css', 'texts.json', 'icon.svg'];

worker.addEventListener('install', (event) => {
  const load = async () => {
    const cache = await caches.open(CACHE);
    await cache.addAll(FILES.map((file) => new Request(file, { cache: 'reload' })));
    await worker.skipWaiting();
  };
  event.waitUntil(load());
});

worker.addEventListener('activate', (event) => {
  const settle = async () => {
    for (const name of await caches.keys()) if (name !== CACHE) await caches.delete(name);
    await worker.clients.claim();
  };
  event.waitUntil(settle());
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  const own = new URL('./', worker.location.href);
  if (request.method !== 'GET' || url.origin !== own.origin) return;
  const name = url.pathname.slice(own.pathname.length);
  if (!FILES.includes(name || './')) return;
  const answer = async () => (await caches.match(name || './')) ?? (await fetch(request));
  event.respondWith(answer());
});
