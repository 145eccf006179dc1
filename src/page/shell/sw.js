keep("@SUM@");

function keep(wanted) {
  // Keeps the page on the device, whole or not at all.
  //
  // A template: `cargo xtask build` fills in the files with their digests, the
  // version (a digest of that list and of this text), and the CRC-32 of the
  // function below. Rules that must hold:
  // - a version is fetched completely and checked, or it is not installed;
  // - so is this text: one that a host or a network has spoilt or cut short never
  //   takes the place of the one that works;
  // - a new version waits until the person takes it, or until no page is open:
  //   never in the middle of a measurement;
  // - a page and its files are of one version;
  // - what is asked for as an asset is never answered with a page.
  //
  // Called before it is there: wherever this text is cut off, what is left of it
  // is an error. And all of it is within, so that a spoilt letter is noticed.
  let sum = -1;
  for (const letter of String(keep)) {
    sum ^= letter.charCodeAt(0);
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (0xedb88320 & -(sum & 1));
  }
  if (~sum >>> 0 !== wanted) throw new Error("the worker is not as it was built");

  const VERSION = "@VERSION@";
  const FILES = "@FILES@";

  // Two copies of the page in two folders of one host share the cache storage.
  const FAMILY = `coldseat ${new URL(self.registration.scope).pathname} `;
  const CACHE = FAMILY + VERSION;
  const INDEX = new URL("./", self.registration.scope).href;
  const KEPT = new Map(
    FILES.map(([url, integrity]) => [new URL(url, self.registration.scope).href, integrity]),
  );

  const fetched = (address, cache) =>
    fetch(address, { cache, credentials: "same-origin", integrity: KEPT.get(address) });

  const fromHost = (address) => fetched(address, "reload");

  // At a first visit: what the page has just fetched need not come over the line
  // again; where that is of another version its digest refuses it.
  const asFetched = (address) =>
    fetched(address, "force-cache").catch(() => fromHost(address));

  async function fetchAll() {
    const known = (await caches.keys()).some((name) => name.startsWith(FAMILY));
    const found = await Promise.all(
      [...KEPT.keys()].map(async (address) => {
        const response = await (known ? fromHost : asFetched)(address);
        if (!response.ok) throw new Error(`${address}: ${response.status}`);
        // A copy without the mark of a redirect, which a navigation refuses.
        const { headers, status } = response;
        return [address, new Response(await response.blob(), { headers, status })];
      }),
    );
    try {
      const cache = await caches.open(CACHE);
      await Promise.all(found.map(([address, response]) => cache.put(address, response)));
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
  async function page(event, url) {
    const address = without(url, "hash", "search");
    const own = address === `${INDEX}index.html` ? INDEX : address;
    const found = KEPT.has(own) ? await kept(own) : undefined;
    if (found) return found;
    if (own === INDEX) {
      // The device has lost it. The host's page may be another version, so the
      // other files go too; all are kept anew if they are still to be had.
      await caches.delete(CACHE);
      event.waitUntil(fetchAll().catch(() => {}));
    }
    try {
      return await fetch(event.request);
    } catch (error) {
      if (own === INDEX) throw error;
      return Response.redirect(INDEX);
    }
  }

  /** A file of this version, or the network's; a page in its place is an error. */
  async function asset(event, url) {
    const address = without(url, "hash");
    const found = KEPT.has(address) ? await kept(address) : undefined;
    if (found) return found;
    // Lost by the device while the page is still of this version.
    if (KEPT.has(address) && (await kept(INDEX))) return fromHost(address);
    const response = await fetch(event.request);
    const isPage = (response.headers.get("content-type") ?? "").includes("text/html");
    if (isPage && address !== INDEX) return new Response("not here", { status: 404 });
    return response;
  }

  const answers = {
    install: (event) => event.waitUntil(fetchAll()),
    activate: (event) => event.waitUntil(takeOver()),
    message: (event) => {
      if (event.data?.type === "SKIP_WAITING") self.skipWaiting();
    },
    fetch: (event) => {
      const request = event.request;
      const url = new URL(request.url);
      if (request.method !== "GET" || url.origin !== self.location.origin) return;
      event.respondWith(request.mode === "navigate" ? page(event, url) : asset(event, url));
    },
  };
  for (const [name, answer] of Object.entries(answers)) self.addEventListener(name, answer);
}
