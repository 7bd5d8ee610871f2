/** Names of the notes for the driver and the next mechanic. */
export type NoteName =
  | 'leave it alone'
  | 'warning lamp stays on'
  | 'same fuse'
  | 'before work on the wiring'
  | 'restraint wiring'
  | 'high voltage'
  | 'live with the isolator off'
  | '24 volts'
  | 'exhaust';
