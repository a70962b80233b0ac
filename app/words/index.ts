/**
 * The door of words: codes and their values into sentences of the maker's language, by i18next and `locales/`.
 * Lengths, angles, dates and plurals are written here as the language writes them; no sentence is, and no screen.
 */

export { directionOf, type LocaleId, locales, nearestLocale, ownName, readTag } from './locales';
export { createLearner, createSay, type Learner } from './say';
export { percentSign, writtenAmount, writtenDay, writtenMoment, writtenTime } from './written';
