import { createContext, type ReactElement, type ReactNode, useContext, useMemo, useState } from 'react';
import {
  floorOfMoment,
  type SettingRegister,
  type SettingWords,
  settingRegister,
  settingWords,
} from '../../../proof/settings/index.ts';
import type { SettingMoment } from '../../../record/setting-moments.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';

/** The register over the records that are here, and the moment at which is read. */
export interface ShownRegister {
  readonly register: SettingRegister;
  readonly says: SettingWords;
  readonly moment: SettingMoment;
  readonly chooseMoment: (moment: SettingMoment) => void;
  /** Floor on which a setting of that moment is read. */
  readonly floorAt: (moment: SettingMoment) => string;
}

const RegisterContext = createContext<ShownRegister | undefined>(undefined);

export const useRegister = (): ShownRegister => {
  const shown = useContext(RegisterContext);
  if (shown === undefined) throw new Error('a part of the page stands outside its register');
  return shown;
};

export const WithRegister = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const { book, assessment, floor } = useProof();
  const { records } = useKeptRecords();
  const { say, numbers } = useWords();
  const [chosen, setChosen] = useState<SettingMoment>();
  const moment = chosen ?? (floor.role === 'bound for' ? 'as left' : 'run-off');
  // a key in a form changes no record
  const register = useMemo(() => settingRegister(book, assessment, records), [book, assessment, records]);
  const says = useMemo(() => settingWords(book, say, numbers), [book, say, numbers]);
  const shown = useMemo((): ShownRegister => {
    const floorAt = (at: SettingMoment): string => floorOfMoment(book, at) ?? floor.floor;
    return { register, says, moment, chooseMoment: setChosen, floorAt };
  }, [register, says, moment, book, floor.floor]);
  return <RegisterContext value={shown}>{children}</RegisterContext>;
};
