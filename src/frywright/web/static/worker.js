// Keeps the board on the tablet when the server is lost: network first, the last good copy otherwise.
const CACHE = "frywright-board-1";
self.addEventListener("install", (event) => event.waitUntil(self.skipWaiting()));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => event.waitUntil(self.clients.claim())); // a page that came while it began
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !/^(\/at\/\w+)?\/(day\/(board|line)|static|fonts)/.test(new URL(request.url).pathname)) return;
  event.respondWith((async () => {
    const cache = await caches.open(CACHE);
    const plain = new URL(request.url);
    plain.searchParams.delete("now_s");
    try {
      const answer = await fetch(request);
      if (answer.ok) await cache.put(plain.href, answer.clone());
      return answer;
    } catch (lost) {
      const kept = await cache.match(plain.href);
      if (!kept) throw lost;
      const headers = new Headers(kept.headers);
      headers.set("x-kept-copy", "yes"); // so that nobody takes an old copy for an answer
      return new Response(kept.body, { status: kept.status, headers });
    }
  })());
});
