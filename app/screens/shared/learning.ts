import { noteHappening } from './trouble/happened';

let learn: () => Promise<void> = () => Promise.resolve();
let learnt: Promise<void> | undefined;

/** How the words beyond the first screen's are to be had. */
export function learnFrom(how: () => Promise<void>): void {
  learn = how;
  learnt = undefined;
}

/** All the words, fetched once; tried again when it failed. Awaited before any screen but the first is shown. */
export function learnAll(): Promise<void> {
  learnt ??= learn().catch((error) => {
    learnt = undefined;
    noteHappening(error);
    throw error;
  });
  return learnt;
}
