// Keeps the page on the device, whole or not at all.
//
// A template: `cargo xtask build` fills in the files with their digests and
// the version, a digest of that list and of this text. Rules that must hold:
// - a version is fetched completely and checked, or it is not installed;
// - a new version waits until the person takes it, or until no page is open:
//   never in the middle of a measurement;
// - a page and its files are of one version;
// - what is asked for as an asset is never answered with a page.

const VERSION = "@VERSION@";
const FILES = "@FILES@";

// Two copies of the page in two folders of one host share the cache storage.
const FAMILY = `coldseat ${new URL(self.registration.scope).pathname} `;
const CACHE = FAMILY + VERSION;
const INDEX = new URL("./", self.registration.scope).href;
const KEPT = new Set(FILES.map(([url]) => new URL(url, self.registration.scope).href));

self.addEventListener("install", (event) => {
  event.waitUntil(fetchAll());
});

self.addEventListener("activate", (event) => {
  event.waitUntil(takeOver());
});

self.addEventListener("message", (event) => {
  if (event.data?.type === "SKIP_WAITING") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  event.respondWith(request.mode === "navigate" ? page(request, url) : asset(request, url));
});

async function fetchAll() {
  try {
    const cache = await caches.open(CACHE);
    await Promise.all(
      FILES.map(async ([url, integrity]) => {
        const request = new Request(new URL(url, self.registration.scope), {
          cache: "reload",
          credentials: "same-origin",
          integrity,
        });
        const response = await fetch(request);
        if (!response.ok) throw new Error(`${url}: ${response.status}`);
        // A copy without the mark of a redirect, which a navigation refuses.
        const { headers, status } = response;
        await cache.put(request.url, new Response(await response.blob(), { headers, status }));
      }),
    );
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function takeOver() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(FAMILY) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

const without = (url, ...parts) => {
  const plain = new URL(url);
  for (const part of parts) plain[part] = "";
  return plain.href;
};

async function kept(address) {
  return (await caches.open(CACHE)).match(address, { ignoreVary: true });
}

/**
 * The page for its own address; a file's address opened as a page is the file.
 * Any other address is the host's to answer (the page's links are relative, so
 * the page must not stand anywhere else); without a network it leads home.
 */
async function page(request, url) {
  const address = without(url, "hash", "search");
  const own = address === `${INDEX}index.html` ? INDEX : address;
  const found = KEPT.has(own) ? await kept(own) : undefined;
  if (found) return found;
  try {
    return await fetch(request);
  } catch (error) {
    if (own === INDEX) throw error;
    return Response.redirect(INDEX);
  }
}

/** A file of this version, or the network's; a page in its place is an error. */
async function asset(request, url) {
  const address = without(url, "hash");
  const found = KEPT.has(address) ? await kept(address) : undefined;
  if (found) return found;
  const response = await fetch(request);
  const isPage = (response.headers.get("content-type") ?? "").includes("text/html");
  if (isPage && address !== INDEX) return new Response("not here", { status: 404 });
  return response;
}
