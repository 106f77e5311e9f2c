import type { ReactElement } from 'react';
import { BypassPart } from './bypass-part.tsx';
import { ComparePart } from './compare-part.tsx';
import { RegisterPart } from './register-part.tsx';
import { SheetPart } from './sheet-part.tsx';
import { WithRegister } from './with-register.tsx';

/** Everything that can be turned, typed or moved, what changed of it, and what is forced for a test. */
export const SettingsView = (): ReactElement => (
  <div className="settings-view">
    <WithRegister>
      <BypassPart />
      <RegisterPart />
      <ComparePart />
      <SheetPart />
    </WithRegister>
  </div>
);
