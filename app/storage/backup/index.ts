/**
 * Everything in one file and back; loaded only when first asked for. Screens use the desk, which works on a thread of its
 * own; the rest is what the desk does.
 */
export { allowFolder, chooseFolder, chosenFolder, folderCanBeChosen, forgetFolder } from '../copies/chosen';
export { keepCopiesCurrent } from '../copies/current';
export { findCopies } from '../copies/own';
export { openDesk } from './desk';
export { backupFile, exportAll } from './export';
export { readBackup } from './read';
export { copyKept, forgetCopy, importAll, previewImport, undoReplace } from './restore';
