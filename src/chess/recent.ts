/**
 * A map that forgets: it holds at least the last `room` entries set and at most twice as many,
 * so that a long session cannot fill the memory.
 */
export class Recent<Key, Value> {
  private young = new Map<Key, Value>();
  private old = new Map<Key, Value>();
  private readonly room: number;

  constructor(room: number) {
    this.room = room;
  }

  get size(): number {
    return this.young.size + this.old.size;
  }

  get(key: Key): Value | undefined {
    const value = this.young.get(key);
    if (value !== undefined) return value;
    const older = this.old.get(key);
    if (older !== undefined) this.set(key, older);
    return older;
  }

  set(key: Key, value: Value): void {
    if (this.young.size >= this.room) {
      this.old = this.young;
      this.young = new Map();
    }
    this.young.set(key, value);
  }
}
