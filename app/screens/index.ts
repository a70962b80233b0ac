/**
 * The screens: what the maker sees, one folder or file each, and the shell that shows the one the address names. The
 * only room that knows all the others. No computing of measures, patterns or paper ever lives here.
 */
export { start } from './shell/start';
export { offerUpdate } from './shell/updates';
