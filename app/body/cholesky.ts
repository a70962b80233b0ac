/** Rows of a matrix. */
export type Matrix = readonly (readonly number[])[];

/** Lower triangular root of a symmetric positive definite matrix (Cholesky). */
export function cholesky(matrix: Matrix): Matrix {
  const root: number[][] = [];
  matrix.forEach((line, i) => {
    const current: number[] = [];
    for (let j = 0; j <= i; j++) {
      const above = root[j] ?? current;
      let rest = line[j] ?? 0;
      for (let k = 0; k < j; k++) rest -= (current[k] ?? 0) * (above[k] ?? 0);
      current.push(i === j ? Math.sqrt(rest) : rest / (above[j] ?? 1));
    }
    root.push(current);
  });
  return root;
}

/** Solves root · x = right by forward substitution. */
export function forward(root: Matrix, right: readonly number[]): readonly number[] {
  const solved: number[] = [];
  root.forEach((line, i) => {
    let rest = right[i] ?? 0;
    for (let k = 0; k < i; k++) rest -= (line[k] ?? 0) * (solved[k] ?? 0);
    solved.push(rest / (line[i] ?? 1));
  });
  return solved;
}

/** Inverse of the symmetric positive definite matrix whose root is given: the root's inverse turned over, times itself. */
export function inverseOf(root: Matrix): Matrix {
  const size = root.length;
  const columns = root.map((_, at) => rootColumn(root, at));
  const inverse = columns.map(() => new Array<number>(size).fill(0));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const [one, other] = [columns[i], columns[j]] as const;
      let total = 0;
      for (let k = i; k < size; k++) total += (one?.[k] ?? 0) * (other?.[k] ?? 0);
      (inverse[i] ?? [])[j] = total;
      (inverse[j] ?? [])[i] = total;
    }
  }
  return inverse;
}

/** One column of the root's inverse: zero above `at`. */
function rootColumn(root: Matrix, at: number): number[] {
  const column = new Array<number>(root.length).fill(0);
  for (let i = at; i < root.length; i++) {
    const line = root[i] ?? [];
    let rest = i === at ? 1 : 0;
    for (let k = at; k < i; k++) rest -= (line[k] ?? 0) * (column[k] ?? 0);
    column[i] = rest / (line[i] ?? 1);
  }
  return column;
}

export function dot(a: readonly number[], b: readonly number[]): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += (a[i] ?? 0) * (b[i] ?? 0);
  return total;
}
