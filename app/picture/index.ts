/**
 * The one door for pictures from outside: how large a file says its picture is, read before anything is unpacked, and
 * its pixels, never more of them than asked for. What a picture shows is for others; no storage and no screen ever live here.
 */
export { openBitmap, PictureError } from './open';
export { isFitToKeep, isFitToOpen, type PictureSize, type PictureType, pictureSize } from './size';
