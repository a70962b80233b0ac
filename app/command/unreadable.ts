import { EXIT, type Exit } from './call';
import { complain } from './terminal';

/** What cannot be read is said in one line, where and why; and so the command ends. */
export function unreadable(where: string, why: string): Exit {
  complain(`${where}: ${why}`);
  return EXIT.unreadable;
}

/** What a file's text says as JSON, a byte order mark passed over; undefined where it is none. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/u, ''));
  } catch {
    return undefined;
  }
}
