// A sheet laid over the page: it holds the focus until it is put away.
import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

export interface SheetOf {
  readonly title: string;
  /** What putting it away is called; “Close” where nothing ends with it. */
  readonly closeWords?: string;
  /** Where what it holds stands in columns. */
  readonly isWide?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export const Sheet = ({ title, closeWords = 'Close', isWide = false, onClose, children }: SheetOf) => (
  <ModalOverlay
    className="sheet-ground"
    isOpen
    isDismissable
    onOpenChange={(isOpen) => (isOpen ? undefined : onClose())}
  >
    <Modal className={isWide ? 'sheet is-wide' : 'sheet'}>
      <Dialog className="sheet-inner">
        <div className="sheet-head">
          <Heading slot="title" className="sheet-title">
            {title}
          </Heading>
          <button type="button" onClick={onClose}>
            {closeWords}
          </button>
        </div>
        {children}
      </Dialog>
    </Modal>
  </ModalOverlay>
);
