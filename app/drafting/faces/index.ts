// The door of faces: letters beyond those every PDF reader brings, shaped and put in order by libraries. Which script is
// whose is a table; a face's bytes are handed in, since the app fetches them and the command reads them. No page is drawn here.

export { facesAtHand } from './at-hand';
export { type Face, type Faces, type Glyph, openFace } from './face';
export { type Direction, type Level, levelsOf, mirrored } from './levels';
export { type FaceId, faceIds, faceOfLetter, facesOfLanguage } from './rows';
