import { version } from '../../../package.json';

/** The version of this app and of the drafting inside it. */
export const engineVersion: string = version;
