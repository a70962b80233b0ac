/**
 * The scripts of ours that a page may start by address: the workers for drafting and for backups and the service worker,
 * as built and as served while developing.
 */
const OURS = /\/(sw\.js|assets\/worker-[\w-]+\.js|(work|storage\/backup)\/worker\.ts)$/;

type Policy = { createScriptURL(address: string): string };
type PolicyMaker = { createPolicy(name: string, rules: Policy): Policy };

const rules: Policy = { createScriptURL: ours };
const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
const policy = maker?.createPolicy('hemling', rules) ?? rules;

/**
 * An address that the page's content policy lets a worker or service worker be started from.
 * @param address of one of the two, relative to the page or absolute
 * @throws {TypeError} for any other script
 */
export function trustedAddress(address: string): string {
  return policy.createScriptURL(address);
}

function ours(address: string): string {
  const { origin, pathname } = new URL(address, document.baseURI);
  if (origin !== location.origin || !OURS.test(pathname)) throw new TypeError('foreign-script');
  return address;
}
