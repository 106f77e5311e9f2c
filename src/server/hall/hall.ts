import { createHash, timingSafeEqual } from 'node:crypto';
import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import { serverProblem } from '../problems.ts';
import { lockedFor, makeGuessLimits } from './guess-limits.ts';
import type { Gate, HallPorts, KeyAndCertificate, Listening, Network, Way } from './hall-ports.ts';
import { deviceName, type JoinedDevice, openJoinedDevices } from './joined-devices.ts';
import { fingerprintOf, keptCertificate } from './kept-certificate.ts';
import { makePairingCode, readPairingCode, shownPairingCode } from './pairing-code.ts';
import { cookieOf, tokenIn } from './session-cookie.ts';
import { worldCode } from './world-code.ts';

/** How long a code may be typed, in milliseconds: time to walk to the machine with it. */
export const codeLives = 5 * 60_000;

/** Why a code is gone. */
export type CodeOver = 'used' | 'late' | 'guessed';

export interface OpenDoor {
  readonly address: string;
  readonly port: number;
  readonly way: Way;
  /** What the device's browser opens. */
  readonly url: string;
  /** With `tls`: SHA-256 over the certificate, to be compared. */
  readonly fingerprint?: string;
}

/** The door as this machine holds it. */
interface Door extends OpenDoor {
  readonly close: () => Promise<void>;
}

export interface OpenCode {
  readonly text: string;
  /** Moment in milliseconds since 1970. */
  readonly until: number;
}

export interface HallState {
  readonly networks: readonly Network[];
  /** `there` tells whether this machine still has the address: another network gives another one. */
  readonly door?: OpenDoor & { readonly there: boolean };
  readonly code?: OpenCode;
  readonly over?: CodeOver;
  /** Wrong codes since this one was made. */
  readonly wrong: number;
  readonly devices: readonly JoinedDevice[];
}

export interface Wanted {
  readonly address: string;
  readonly port: number;
  readonly way: Way;
}

export interface Hall {
  readonly state: () => HallState;
  readonly open: (wanted: Wanted) => Promise<Result<HallState>>;
  readonly close: () => Promise<HallState>;
  /** Makes a code; the one before is void. */
  readonly renewCode: () => Result<HallState>;
  readonly remove: (device: string) => Promise<Result<HallState>>;
}

const addressText = (address: string): string => (address.includes(':') ? `[${address}]` : address);

const shownDoor = (
  { close: _, ...door }: Door,
  near: readonly Network[],
): OpenDoor & { readonly there: boolean } => ({
  ...door,
  there: near.some(({ address }) => address === door.address),
});

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/**
 * The door for devices in the hall. It is shut until somebody at this machine asks for it, and shut again with the
 * program; who has joined stays joined for the next time that it is open.
 */
export const makeHall = async (ports: HallPorts): Promise<Hall> => {
  const { clock, random, networks } = ports;
  const devices = await openJoinedDevices(ports);
  const limits = makeGuessLimits();
  let door: Door | undefined;
  let code: OpenCode | undefined;
  let over: CodeOver | undefined;
  let opening = false;

  const living = (): OpenCode | undefined => {
    if (code !== undefined && clock() >= code.until) {
      code = undefined;
      over = 'late';
    }
    return code;
  };

  const state = (): HallState => {
    const open = living();
    const near = networks();
    return {
      networks: near,
      ...(door === undefined ? {} : { door: shownDoor(door, near) }),
      ...(open === undefined ? {} : { code: { text: shownPairingCode(open.text), until: open.until } }),
      ...(over === undefined ? {} : { over }),
      wrong: limits.wrong(),
      devices: devices.list(),
    };
  };

  const newCode = (): void => {
    code = { text: makePairingCode(random), until: clock() + codeLives };
    over = undefined;
    limits.renew();
  };

  const endCode = (why?: CodeOver): void => {
    code = undefined;
    over = why;
  };

  const gateOf = (way: Way): Gate => ({
    way,
    visitor: (cookie) => {
      const token = tokenIn(cookie, way);
      return token === undefined ? undefined : devices.holder(token, way);
    },
    join: async ({ from, code: typed, name }) => {
      const minutes = limits.waits(from, clock());
      if (minutes !== undefined)
        return refuse(serverProblem('HALL_LOCKED', 'code', { allowed: String(minutes) }));
      const named = deviceName(name);
      const read = readPairingCode(typed);
      const problems: Problem[] = [
        ...(read.ok ? [] : read.problems),
        ...(named === '' ? [serverProblem('HALL_NAME_ABSENT', 'name')] : []),
      ];
      if (!read.ok || problems.length > 0) return { ok: false, problems };
      const open = living();
      if (open === undefined) return refuse(serverProblem('HALL_CODE_OVER', 'code'));
      // by digests of one length, so that the time taken tells nothing of how much was right
      if (!timingSafeEqual(digest(read.value), digest(open.text))) {
        const { left, spent } = limits.missed(from, clock());
        if (spent) endCode('guessed');
        return refuse(
          left === 0
            ? serverProblem('HALL_LOCKED', 'code', { allowed: String(lockedFor / 60_000) })
            : serverProblem('HALL_CODE_WRONG', 'code', { given: left }),
        );
      }
      // void before anything is waited for: of two that send it at once, one joins
      endCode('used');
      const token = await devices.join(named, way);
      return token.ok ? accept(cookieOf(token.value, way)) : token;
    },
  });

  const close = async (): Promise<HallState> => {
    const closing = door;
    door = undefined;
    endCode();
    await closing?.close();
    return state();
  };

  const openDoor = async ({ address, port, way }: Wanted): Promise<Result<Door>> => {
    let keyAndCertificate: KeyAndCertificate | undefined;
    let listening: Listening;
    try {
      keyAndCertificate = way === 'tls' ? await keptCertificate(ports) : undefined;
    } catch (cause) {
      return refuse(serverProblem('HALL_NO_CERTIFICATE', 'way', { allowed: worldCode(cause) }));
    }
    try {
      listening = await ports.listen({
        address,
        port,
        gate: gateOf(way),
        ...(keyAndCertificate === undefined ? {} : { keyAndCertificate }),
      });
    } catch (cause) {
      const code = worldCode(cause);
      return refuse(
        code === 'EADDRINUSE'
          ? serverProblem('HALL_PORT_TAKEN', 'port', { given: port })
          : serverProblem('HALL_CANNOT_OPEN', 'port', {
              given: `${addressText(address)}:${port}`,
              allowed: code,
            }),
      );
    }
    const scheme = way === 'tls' ? 'https' : 'http';
    return accept({
      address,
      port: listening.port,
      way,
      url: `${scheme}://${addressText(address)}:${listening.port}/`,
      ...(keyAndCertificate === undefined
        ? {}
        : { fingerprint: fingerprintOf(keyAndCertificate.certificate) }),
      close: listening.close,
    });
  };

  return {
    state,
    open: async (wanted) => {
      if (door !== undefined || opening) return refuse(serverProblem('HALL_OPEN', 'address'));
      if (!networks().some(({ address }) => address === wanted.address)) {
        return refuse(serverProblem('HALL_NO_SUCH_ADDRESS', 'address', { given: wanted.address }));
      }
      opening = true;
      const opened = await openDoor(wanted);
      opening = false;
      if (!opened.ok) return opened;
      door = opened.value;
      newCode();
      return accept(state());
    },
    close,
    renewCode: () => {
      if (door === undefined) return refuse(serverProblem('HALL_CLOSED', 'code'));
      newCode();
      return accept(state());
    },
    remove: async (device) => {
      const removed = await devices.remove(device);
      return removed.ok ? accept(state()) : removed;
    },
  };
};
