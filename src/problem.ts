/** Something is wrong outside the program (a file, a template, an answer); `main.ts` prints it and picks the exit code. */
export class Problem extends Error {
  readonly what: string;
  readonly where: string;
  readonly whatToDo: string;
  readonly exitCode: 1 | 2 | 3;

  /**
   * @param what one sentence: what is wrong
   * @param where file and field (or command and option) where it stands
   * @param whatToDo one sentence: what corrects it
   * @param exitCode 1 the answer is no, 2 the call was wrong, 3 the input was wrong (default)
   */
  constructor(what: string, where: string, whatToDo: string, exitCode: 1 | 2 | 3 = 3) {
    super(`${what} (${where}) ${whatToDo}`);
    this.name = 'Problem';
    this.what = what;
    this.where = where;
    this.whatToDo = whatToDo;
    this.exitCode = exitCode;
  }
}
