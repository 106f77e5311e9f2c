import type { Result } from '../../quantity/problem.ts';

/** An address of this machine in a network that others are in too. */
export interface Network {
  /** Name of the interface, as the system has it. */
  readonly name: string;
  readonly address: string;
}

/** How the hall comes in: `tls` by a certificate that this machine made, `plain` unencrypted, where a device takes no such certificate. */
export type Way = 'tls' | 'plain';

export interface KeyAndCertificate {
  /** PEM. */
  readonly key: string;
  readonly certificate: string;
}

/** A device that comes in through the hall's door. */
export interface Visitor {
  readonly id: string;
  readonly name: string;
  readonly way: Way;
}

/** What the hall's own listener is made with. */
export interface HallDoor {
  readonly address: string;
  readonly port: number;
  /** Absent where it is unencrypted. */
  readonly keyAndCertificate?: KeyAndCertificate;
  readonly gate: Gate;
}

/** What the hall's listener asks about everybody who comes. */
export interface Gate {
  readonly way: Way;
  /** The joined device that sends this cookie. */
  readonly visitor: (cookie: string | undefined) => Visitor | undefined;
  /** Joins a device and gives the cookie that it is to keep. */
  readonly join: (asking: {
    readonly from: string;
    readonly code: string;
    readonly name: string;
  }) => Promise<Result<string>>;
}

export interface Listening {
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** Files in a folder of the hall's own, which this account alone may read. */
export interface HallFiles {
  readonly read: (name: string) => Promise<string | undefined>;
  /** Whole or not at all; readable by this account alone. */
  readonly write: (name: string, text: string) => Promise<void>;
}

/** What the hall is handed. */
export interface HallPorts {
  /** Now, in milliseconds since 1970. */
  readonly clock: () => number;
  readonly random: (bytes: number) => Uint8Array;
  readonly networks: () => readonly Network[];
  /** Names by which devices may call this machine beside its addresses. */
  readonly names: readonly string[];
  readonly files: HallFiles;
  readonly listen: (door: HallDoor) => Promise<Listening>;
}
