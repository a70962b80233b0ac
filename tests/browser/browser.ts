/**
 * The built app in a real browser: a server for dist/ that can be stopped and started again, and pages that report
 * whatever went wrong in them. What a test looks at stays in the test.
 */
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { fontEnvironment } from '../../.config/fonts.mjs';
import { type Instead, serve } from '../../.config/serve.mjs';
import { findBrowser } from '../../.config/setup.mjs';
import type { Font } from './fonts';

export const DIST = fileURLToPath(new URL('../../dist', import.meta.url));
/**
 * Chromium makes two pages of its own for the address bar of every window, which nobody sees and which cost more than
 * ours. A later list of features takes the place of an earlier one, so those that Playwright does without come along.
 */
const WITHOUT = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'OmniboxAimPopup',
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'BlockOriginHeaderModificationOnRedirect',
  'DestroyProfileOnBrowserClose',
  'DialMediaRouteProvider',
  'GlobalMediaControls',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'Translate',
];
export const FLAGS = [
  `--disable-features=${WITHOUT.join(',')}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** So many frames without a change, and a page is taken to be ready: a tenth of a second at sixty a second. */
const STILL_FRAMES = 6;

/** The smallest phone we design for, and a common desktop, in CSS pixels. */
export const phone = {
  viewport: { width: 360, height: 640 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
} satisfies BrowserContextOptions;
export const desktop = { viewport: { width: 1280, height: 800 } } satisfies BrowserContextOptions;

/** A page of its own store and its own list of what went wrong: script errors, policy breaches, failed or foreign requests. */
export type Visit = { page: Page; wrong: string[]; close: () => Promise<void> };

export type Site = {
  /** Where the app is served, with a slash at the end. */
  address: string;
  browser: Browser;
  visit: (options?: BrowserContextOptions) => Promise<Visit>;
  /** Cuts the network off: the server is gone until `restart`. */
  stop: () => Promise<void>;
  restart: () => Promise<void>;
  close: () => Promise<void>;
};

export type Served = {
  readonly under?: string;
  readonly folder?: string;
  readonly font?: Font;
  readonly smallest?: number;
  readonly instead?: Instead;
  readonly keeps?: boolean;
  readonly windows?: boolean;
};

/**
 * Serves a build, dist/ unless told otherwise, below `under` and starts a browser.
 * @param under begins and ends with a slash
 * @param font the only letters there are; none: those of this device
 * @param smallest no letters are drawn smaller, CSS pixels, as a device can be set
 * @param instead what a bad network answers in a file's place
 * @param windows whether the browser needs windows of its own, as for showing a PDF
 * @param keeps whether pages keep the app for offline use, which takes its time; what is only looked at need not
 */
export async function openSite({
  under = '/',
  folder = DIST,
  font,
  smallest,
  instead,
  keeps = true,
  windows = false,
}: Served = {}): Promise<Site> {
  const executablePath = findBrowser(windows ? 'chromium' : 'windowless');
  if (!executablePath) throw new Error('no-browser');
  const how = { folder, under, ...(instead && { instead }) };
  let server = await serve(how);
  const { address } = server;
  const browser = await chromium.launch({
    executablePath,
    args: smallest ? [...FLAGS, `--blink-settings=minimumFontSize=${smallest}`] : FLAGS,
    env: { ...process.env, ...fontEnvironment(font) },
  });
  return {
    address,
    browser,
    visit: async (options = phone) => {
      const visited = await visit(browser, address, keeps ? options : { ...options, serviceWorkers: 'block' });
      if (font) await visited.page.addInitScript(saveData);
      return visited;
    },
    stop: () => server.close(),
    restart: async () => {
      server = await serve({ ...how, port: Number(new URL(address).port) });
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

/** Waits until the app is kept on the device, so that it opens without a network. */
export async function untilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
  });
}

/** Waits until a screen is drawn, and a tap on it counts: one right after the screen changed is passed over. */
export async function untilStill(page: Page): Promise<void> {
  await untilDrawn(page);
  await page.locator('html:not(.just-changed)').waitFor({ state: 'attached' });
}

/**
 * Waits until nothing on the page changes any more: for so many frames no element, and no animation that ends. What is
 * still being read or drawn elsewhere cannot be seen from here; wait for its words first.
 */
export async function untilDrawn(page: Page): Promise<void> {
  // A screen that is still being fetched is still too, and has no title yet.
  await page.locator('h1').first().waitFor();
  await page.evaluate(
    (frames) =>
      new Promise<void>((done) => {
        let still = 0;
        const root = document.documentElement;
        const observer = new MutationObserver((changes) => {
          // That taps count again shows nowhere.
          const seen = ({ target, attributeName }: MutationRecord) => target !== root || attributeName !== 'class';
          if (changes.some(seen)) still = 0;
        });
        observer.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        const moving = () =>
          document.getAnimations().some(({ playState, effect }) => {
            return playState === 'running' && effect?.getTiming().iterations !== Number.POSITIVE_INFINITY;
          });
        const look = () => {
          still = moving() ? 0 : still + 1;
          if (still < frames) return requestAnimationFrame(look);
          observer.disconnect();
          return done();
        };
        requestAnimationFrame(look);
      }),
    STILL_FRAMES,
  );
}

/** Who saves data keeps the letters of the device: these may not be painted over by our own. */
function saveData(): void {
  Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
}

async function visit(browser: Browser, address: string, options: BrowserContextOptions): Promise<Visit> {
  const context = await browser.newContext(options);
  // A program of ours has its functions named by a helper that is not in the page they are sent to.
  await context.addInitScript({ content: 'globalThis.__name ??= (named) => named;' });
  const page = await context.newPage();
  return { page, wrong: wrongIn(page, address, options), close: () => context.close() };
}

/** A list that fills with whatever goes wrong in a page. */
export function wrongIn(page: Page, address: string, { serviceWorkers }: BrowserContextOptions): string[] {
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => {
    // Playwright's way of blocking service workers is an error to whoever registers one.
    if (serviceWorkers !== 'block' || !message.includes("reading 'waiting'")) wrong.push(`error: ${message}`);
  });
  page.on('console', (message) => {
    if (message.type() === 'error') wrong.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    // The browser's own page that shows PDFs asks for its own files.
    if (!/^(blob|data|chrome|chrome-extension):/.test(request.url()) && !request.url().startsWith(address))
      wrong.push(`asked: ${request.url()}`);
  });
  return wrong;
}
