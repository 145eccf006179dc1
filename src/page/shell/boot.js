// Starts the page, and says so plainly when it cannot.
//
// Kept free of libraries and of everything in the program itself: it must work
// in the very case in which the program does not. It registers no worker; the
// program does that (src/page/offline.rs).

// Views are cloned from templates that hold no script (Leptos sets innerHTML of
// them); nothing else may make markup or load a program, whoever asks for it.
globalThis.trustedTypes?.createPolicy("default", {
  createHTML(html) {
    return /<\/?(?:script|iframe|object|embed|link|meta|base)\b|[\s"'/]on[a-z]+\s*=|javascript:/i.test(html)
      ? null
      : html;
  },
  createScriptURL(url) {
    const asked = new URL(url, document.baseURI);
    return asked.origin === location.origin && asked.pathname.endsWith("/sw.js") ? url : null;
  },
});

// The language chosen on this device, else the first of the browser's own that the
// page has; the program takes it from the root of the page.
const LANGUAGES = ["en-US", "es-US"];
const CHOSEN = "coldseat/language";

function language() {
  try {
    const chosen = localStorage.getItem(CHOSEN);
    if (LANGUAGES.includes(chosen)) return chosen;
  } catch {
    // Blocked: the browser's own language.
  }
  const short = (tag) => tag.slice(0, 2).toLowerCase();
  for (const tag of navigator.languages ?? []) {
    const found = LANGUAGES.find((own) => short(own) === short(tag));
    if (found) return found;
  }
  return LANGUAGES[0];
}

const root = document.documentElement;
root.lang = language();

const script = document.querySelector("script[data-glue][data-wasm]");
const boot = document.getElementById("boot");
// Found inside, as it is no longer in the page once the program runs.
const part = (name) => boot.querySelector(`#boot-${name}`);

// What is said before any words are here stands in the page in both languages.
function inLanguage() {
  for (const said of boot.querySelectorAll("[data-es]")) {
    said.dataset.en ??= said.textContent;
    said.textContent = root.lang.startsWith("es") ? said.dataset.es : said.dataset.en;
  }
}
inLanguage();
const STOPPED = { "en-US": "Coldseat stopped", "es-US": "Coldseat se detuvo" };

const front = document.getElementById("boot-front");

/** Whether nothing is kept here yet and the address is the front's. */
function isFirstVisit() {
  try {
    const own = Object.keys(localStorage).some(
      (key) => key.startsWith("coldseat/") && key !== CHOSEN,
    );
    // The front in the page is English.
    return !own && root.lang === LANGUAGES[0] && !navigator.serviceWorker?.controller && location.hash.length < 3;
  } catch {
    return false;
  }
}

/** Shows the front while the program is on its way, or the mark that says so. */
function showFront(isFront) {
  front.hidden = !isFront;
  boot.hidden = isFront;
}

showFront(isFirstVisit());
// A door that is tapped before the program is here opens when it is.
const leaves = () => showFront(false);
addEventListener("hashchange", leaves, { once: true });

let started = false;

/** The words of the language, put where the program finds them. */
async function fetchWords(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address.pathname}: ${answer.status}`);
  const words = document.createElement("pre");
  words.id = `words-${root.lang}`;
  words.hidden = true;
  words.textContent = await answer.text();
  document.body.append(words);
  return words;
}

/** Shows what happened and the ways out; the first message stays. */
function fail(reason) {
  if (!part("failed").hidden) return;
  console.error("coldseat:", reason);
  inLanguage();
  part("wait").hidden = true;
  part("failed").hidden = false;
  part("reason").textContent = String(reason?.message ?? reason);
  if (started) part("heading").textContent = STOPPED[root.lang] ?? STOPPED[LANGUAGES[0]];
  part("needs").hidden = started;
  boot.classList.toggle("boot-over", started);
  document.body.prepend(boot);
  showFront(false);
  part("export").focus();
  offerNewVersion();
}

/** What the second store holds, by name; nothing where there is none. */
function durableSlots() {
  return new Promise((done) => {
    const request = indexedDB.open("coldseat");
    // None there: making one is the program's business.
    request.onupgradeneeded = () => request.transaction.abort();
    request.onerror = () => done({});
    request.onsuccess = () => {
      const found = {};
      const reading = request.result.transaction("slots");
      reading.objectStore("slots").openCursor().onsuccess = (event) => {
        const cursor = event.target.result;
        if (!cursor) return;
        found[`${cursor.key}/durable`] = cursor.value;
        cursor.continue();
      };
      reading.oncomplete = () => done(found);
      reading.onabort = () => done(found);
    };
  });
}

/** Everything this origin keeps, in both stores, as one file. */
async function exportData() {
  const kept = {};
  try {
    for (let i = 0; i < localStorage.length; i += 1) {
      const key = localStorage.key(i);
      kept[key] = localStorage.getItem(key);
    }
  } catch {
    // Blocked: the other store may still be open.
  }
  try {
    Object.assign(kept, await durableSlots());
  } catch {
    // What was found is handed over.
  }
  const text = JSON.stringify({ coldseat: "local storage as it was found", kept }, null, 1);
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = "coldseat-rescued.json";
  document.body.append(link);
  link.click();
  link.remove();
}

/** A version that fails to start must not bar the way to its successor. */
async function offerNewVersion() {
  const registration = await navigator.serviceWorker?.getRegistration();
  if (!registration) return;
  const show = () => {
    part("update").hidden = !registration.waiting;
  };
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", show);
  });
  show();
  // Without a network there is none to be had, and that is no second error.
  registration.update().then(show, () => {});
}

part("export").addEventListener("click", () => {
  try {
    exportData();
  } catch (error) {
    part("reason").textContent = `saving failed: ${error.message}`;
  }
});
part("retry").addEventListener("click", () => location.reload());
part("update").addEventListener("click", async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
  registration?.waiting?.postMessage({ type: "SKIP_WAITING" });
});

// After the start: the program ends with a trap, and nothing on the screen
// answers any more. Errors of another kind (an extension's script) do not stop it.
const isTrap = (error) => error instanceof WebAssembly.RuntimeError;
addEventListener("error", (event) => {
  if (isTrap(event.error)) fail(event.error);
});
addEventListener("unhandledrejection", (event) => {
  if (isTrap(event.reason)) fail(event.reason);
});

try {
  const at = (name) => new URL(script.dataset[name], document.baseURI);
  const address = new URL(at("words").href.replace("LANGUAGE", root.lang));
  const [program, words] = await Promise.all([import(at("glue")), fetchWords(address)]);
  await program.default({ module_or_path: at("wasm") });
  words.remove();
  started = true;
  removeEventListener("hashchange", leaves);
  front.remove();
  if (part("failed").hidden) boot.remove();
} catch (error) {
  fail(error);
}
