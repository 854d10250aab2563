/** Whether this page opens without a connection. */
export type KeptPage = "not-yet" | "kept" | "not-possible";

const sameOrigin = (address: string): readonly string[] => {
  const { origin, pathname, search } = new URL(address);
  return origin === location.origin && pathname.startsWith("/_next/static/") ? [pathname + search] : [];
};

/** What the page has loaded so far: scripts, styles, fonts. */
const loadedAssets = (): readonly string[] => [
  ...new Set([
    ...performance.getEntriesByType("resource").flatMap(({ name }) => sameOrigin(name)),
    ...[...document.querySelectorAll<HTMLScriptElement>("script[src]")].flatMap(({ src }) => sameOrigin(src)),
  ]),
];

/** The worker of the field tests of a project; null where the browser has none or forbids it. */
async function workerOf(project: string): Promise<ServiceWorker | null> {
  if (!("serviceWorker" in navigator)) return null;
  const scope = `/project/${project}/field-tests/`;
  const registration = await navigator.serviceWorker.register(`${scope}worker`, { scope });
  const worker = registration.active ?? registration.waiting ?? registration.installing;
  if (worker === null || worker.state === "activated") return worker;
  return new Promise((resolve) => {
    worker.addEventListener("statechange", () => {
      if (worker.state === "activated") resolve(worker);
      if (worker.state === "redundant") resolve(null);
    });
  });
}

/** Has the page kept as the server gives it now, and tells what became of it. */
export async function keepPage(project: string, tell: (kept: KeptPage) => void): Promise<void> {
  try {
    const worker = await workerOf(project);
    if (worker === null) return tell("not-possible");
    const answered = ({ data }: MessageEvent) => {
      if (data?.kept === true) tell("kept");
      navigator.serviceWorker.removeEventListener("message", answered);
    };
    navigator.serviceWorker.addEventListener("message", answered);
    navigator.serviceWorker.startMessages();
    worker.postMessage({ address: location.pathname, loaded: loadedAssets() });
  } catch {
    // Without a connection nothing can be kept anew; what was kept before stays.
    if (!navigator.onLine && navigator.serviceWorker?.controller) tell("kept");
    else tell("not-possible");
  }
}
