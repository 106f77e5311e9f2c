import { describe, expect, it } from 'vitest';
import type { Book } from '../../book/index.ts';
import type { RemedySearch, SolveRemedies } from './page.ts';
import { solveInTurn } from './solve-in-turn.ts';

/** A search that ends when the test says so. */
const byHand = () => {
  const running = new Map<string, (search: RemedySearch | 'failed') => void>();
  const begun: string[] = [];
  const stopped: string[] = [];
  const solve: SolveRemedies = ({ finding }, answer) => {
    begun.push(finding);
    running.set(finding, answer);
    return () => stopped.push(finding);
  };
  return {
    solve,
    begun,
    stopped,
    end: (finding: string) => running.get(finding)?.({ found: [], done: true }),
  };
};

const ask = (finding: string) => ({ book: {} as Book, floor: 'A', finding });
const nobody = (): void => undefined;

describe('searches in turn', () => {
  it('begin when the one before is over', () => {
    const hand = byHand();
    const solve = solveInTurn(hand.solve);
    solve(ask('one'), nobody);
    solve(ask('two'), nobody);
    expect(hand.begun).toEqual(['one']);
    hand.end('one');
    expect(hand.begun).toEqual(['one', 'two']);
  });
  it('make room when the running one is given up', () => {
    const hand = byHand();
    const solve = solveInTurn(hand.solve);
    const giveUp = solve(ask('one'), nobody);
    solve(ask('two'), nobody);
    giveUp();
    expect(hand.stopped).toEqual(['one']);
    expect(hand.begun).toEqual(['one', 'two']);
  });
  it('never begin where they were given up while they waited', () => {
    const hand = byHand();
    const solve = solveInTurn(hand.solve);
    solve(ask('one'), nobody);
    const giveUp = solve(ask('two'), nobody);
    solve(ask('three'), nobody);
    giveUp();
    hand.end('one');
    expect(hand.begun).toEqual(['one', 'three']);
  });
  it('tell nothing more to who gave up', () => {
    const hand = byHand();
    const told: unknown[] = [];
    const giveUp = solveInTurn(hand.solve)(ask('one'), (search) => told.push(search));
    giveUp();
    hand.end('one');
    expect(told).toEqual([]);
  });
});
