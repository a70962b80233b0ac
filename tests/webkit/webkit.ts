/**
 * The main job in WebKit: `npm run build`, then `npm run webkit`. Not part of the tests: its packages are large, and
 * only Debian has them. What is kept lives as long as the session, so the restart is a page loaded anew.
 */
import { serve } from '../../.config/serve.mjs';
import { EXIT } from '../../app/command/call';
import { command } from '../../app/command/command';
import { DIST } from '../browser/browser';
import { openWebKit } from './session';

await command(
  { name: 'webkit', usage: [''], options: {}, words: [0, 0], exits: [EXIT.done, EXIT.unreadable, EXIT.ours] },
  async () => {
    await mainJob();
    return EXIT.done;
  },
);

async function mainJob(): Promise<void> {
  const server = await serve({ folder: DIST });
  const page = await openWebKit();
  const says = (words: string) => page.until('return document.body.innerText.includes(arguments[0])', words);
  const done = (what: string) => console.log(`right  ${what}`);
  console.log(`WebKit ${page.version}`);
  try {
    await page.open(server.address);
    await page.press('Bramble');
    await page.until("return /^#.toy/.test(location.hash) && document.querySelector('h1')?.textContent === 'Bramble'");
    done('a toy is borrowed and kept');
    await page.run("location.hash += '/make'");
    await page.press('Hooded top');
    await page.until('return location.hash.split("/").length > 4');
    const [garment = ''] = /#\/toy\/\w+\/\w+/.exec(await page.run<string>('return location.hash')) ?? [];
    await page.run('location.hash = arguments[0]', `${garment}/measure/head-girth`);
    await page.type('18');
    await says('saved');
    done('a number is typed and saved');
    await page.run('location.hash = arguments[0]', `${garment}/print`);
    await page.until(
      "return [...document.querySelectorAll('button')].some((each) => /Save the PDF|Share/.test(each.textContent) && !each.disabled)",
    );
    done('its pattern is laid out and drawn');
    await page.until('return Boolean(navigator.serviceWorker?.controller)');
    await server.close();
    await page.open(`${server.address}${garment}/measure/head-girth`);
    await page.run('location.reload()');
    await page.until("return document.querySelector('main input[type=\"text\"]')?.value === '18'");
    done('all of it is there without a network');
  } finally {
    await page.close();
    await server.close().catch(() => undefined);
  }
}
