/** Everything in one file and back; loaded only when the maker asks for it. */
export { backupFile, exportAll } from './export';
export { readBackup } from './read';
export { copyKept, forgetCopy, importAll, previewImport, undoReplace } from './restore';
