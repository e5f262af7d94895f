/** ms; an answer that comes this soon replaces the one before without a flicker. Nobody reads in less. */
const moment = 150;

/** Runs something after a moment, and gives what calls it off. */
export type AfterAMoment = (run: () => void) => () => void;

const byTheClock: AfterAMoment = (run) => {
  const timer = setTimeout(run, moment);
  return () => clearTimeout(timer);
};

/**
 * Follows something that was said of a text, and tells when it has not held for a moment, and when it holds again.
 * Look again after each change of the text, of the server and of what was said.
 */
export class Lapse {
  private callOff: (() => void) | undefined;
  private over = false;

  constructor(
    private readonly holds: () => boolean,
    private readonly tell: () => void,
    private readonly later = byTheClock,
  ) {}

  /** It does not hold, and must not be shown as if it did. */
  get lapsed(): boolean {
    return this.over;
  }

  look(): void {
    const holds = this.holds();
    if (holds) this.stop();
    if (holds && this.over) this.turn(false);
    if (holds || this.over || this.callOff !== undefined) return;
    this.callOff = this.later(() => {
      this.callOff = undefined;
      if (!this.holds()) this.turn(true);
    });
  }

  /** Something else is looked at now: what held of the one before says nothing. */
  restart(): void {
    this.stop();
    this.turn(!this.holds());
  }

  stop(): void {
    this.callOff?.();
    this.callOff = undefined;
  }

  private turn(over: boolean): void {
    this.over = over;
    this.tell();
  }
}
