// Which pieces may lie near a box, without looking at each: a bit for every piece in every lane, across and along, that its
// box reaches into. Lanes go round: far apart ones share their bits, which only makes more pieces be looked at.

/** How many lanes there are each way; a power of two. */
const LANES = 64;
/** How many pieces a number has bits for. */
const BITS = 32;
const WORD = 5;

export class Around {
  /** The pieces last found, in order: the first so many of them. */
  readonly found: Int32Array;
  private readonly words: number;
  private readonly columns: Int32Array;
  private readonly rows: Int32Array;
  readonly per: number;

  /** `lane`: how wide a lane is. */
  constructor(count: number, lane: number) {
    this.words = Math.ceil(count / BITS);
    this.columns = new Int32Array(LANES * this.words);
    this.rows = new Int32Array(LANES * this.words);
    this.found = new Int32Array(count);
    this.per = 1 / lane;
  }

  /** Notes that the piece reaches into a box, or no longer does. */
  mark(piece: number, left: number, top: number, right: number, bottom: number, isThere: boolean): void {
    this.markIn(this.columns, piece, left, right, isThere);
    this.markIn(this.rows, piece, top, bottom, isThere);
  }

  private markIn(lanes: Int32Array, piece: number, from: number, to: number, isThere: boolean): void {
    const bit = 1 << (piece % BITS);
    const first = Math.floor(from * this.per);
    const last = Math.min(first + LANES - 1, Math.floor(to * this.per));
    for (let lane = first; lane <= last; lane += 1) {
      const at = (lane & (LANES - 1)) * this.words + (piece >> WORD);
      lanes[at] = isThere ? (lanes[at] as number) | bit : (lanes[at] as number) & ~bit;
    }
  }

  /** The lane that a place lies in. */
  lane(place: number): number {
    return Math.floor(place * this.per) | 0;
  }

  /** How many pieces may reach into both the columns and the rows; `found` says which. */
  find(left: number, right: number, top: number, bottom: number): number {
    const { words, columns, rows, found } = this;
    const lastColumn = Math.min(left + LANES - 1, right);
    const lastRow = Math.min(top + LANES - 1, bottom);
    let count = 0;
    for (let word = 0; word < words; word += 1) {
      let across = 0;
      for (let lane = left; lane <= lastColumn; lane += 1) {
        across |= columns[(lane & (LANES - 1)) * words + word] as number;
      }
      let along = 0;
      for (let lane = top; lane <= lastRow; lane += 1) along |= rows[(lane & (LANES - 1)) * words + word] as number;
      for (let bits = across & along; bits !== 0; bits &= bits - 1) {
        found[count] = (word << WORD) + BITS - 1 - Math.clz32(bits & -bits);
        count += 1;
      }
    }
    return count;
  }
}
