import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { makeSemanticInvoice } from './make-semantic-invoice.ts';
import type { SemanticAllowance, SemanticInvoice, SemanticLine, SemanticTax } from './semantic-invoice.ts';
import { ublParty } from './ubl-party.ts';
import { branch, leaf, type XmlElement, xmlText } from './xml-text.ts';

const spaces = {
  cac: 'urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2',
  cbc: 'urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2',
};
const core = 'urn:cen.eu:en16931:2017';
const peppol = `${core}#compliant#urn:fdc:peppol.eu:2017:poacc:billing:3.0`;
const peppolProcess = 'urn:fdc:peppol.eu:2017:poacc:billing:01:1.0';

/**
 * A document as UBL 2.1 Invoice or CreditNote following EN 16931 (CEN/TS 16931-3-2), as Peppol BIS Billing 3 where both parties' data allow it.
 * @param invoice an issued invoice or credit note
 * @throws Problem naming the file and field that the standard asks for and the data lack
 */
export function ublXml(invoice: IssuedInvoice): string {
  const semantic = makeSemanticInvoice(invoice);
  const root = semantic.credit ? 'CreditNote' : 'Invoice';
  const money = (name: string, amount: string | undefined) => leaf(name, amount, { currencyID: semantic.currency });
  const parts = [
    leaf('cbc:CustomizationID', semantic.peppol ? peppol : core),
    semantic.peppol ? leaf('cbc:ProfileID', peppolProcess) : null,
    leaf('cbc:ID', semantic.number),
    leaf('cbc:IssueDate', semantic.issued),
    semantic.credit ? null : leaf('cbc:DueDate', semantic.due),
    semantic.credit ? leaf('cbc:CreditNoteTypeCode', '381') : leaf('cbc:InvoiceTypeCode', '380'),
    leaf('cbc:Note', semantic.note),
    leaf('cbc:DocumentCurrencyCode', semantic.currency),
    leaf('cbc:BuyerReference', semantic.buyerReference),
    period(semantic.period),
    branch('cac:OrderReference', [leaf('cbc:ID', semantic.orderReference)]),
    branch('cac:BillingReference', [
      branch('cac:InvoiceDocumentReference', [
        leaf('cbc:ID', semantic.preceding?.number),
        leaf('cbc:IssueDate', semantic.preceding?.issued),
      ]),
    ]),
    branch('cac:AccountingSupplierParty', [ublParty(semantic.seller)]),
    branch('cac:AccountingCustomerParty', [ublParty(semantic.buyer)]),
    branch('cac:Delivery', [
      leaf('cbc:ActualDeliveryDate', semantic.delivered),
      branch('cac:DeliveryLocation', [
        branch('cac:Address', [branch('cac:Country', [leaf('cbc:IdentificationCode', semantic.deliverToCountry)])]),
      ]),
    ]),
    payment(semantic),
    branch('cac:PaymentTerms', [leaf('cbc:Note', semantic.terms)]),
    semantic.allowances.map((each) => allowance(each, money, each.tax)),
    taxTotal(semantic, money),
    totals(semantic, money),
    semantic.lines.map((line) => lineElement(line, semantic.credit, money)),
  ];
  const namespace = `urn:oasis:names:specification:ubl:schema:xsd:${root}-2`;
  const document = branch(root, parts, { xmlns: namespace, 'xmlns:cac': spaces.cac, 'xmlns:cbc': spaces.cbc });
  return xmlText(document as XmlElement);
}

type Money = (name: string, amount: string | undefined) => XmlElement | null;

const scheme = branch('cac:TaxScheme', [leaf('cbc:ID', 'VAT')]);

function period(days: { readonly from: string; readonly to: string } | undefined): XmlElement | null {
  return branch('cac:InvoicePeriod', [leaf('cbc:StartDate', days?.from), leaf('cbc:EndDate', days?.to)]);
}

function allowance(each: SemanticAllowance, money: Money, tax?: SemanticTax): XmlElement | null {
  return branch('cac:AllowanceCharge', [
    leaf('cbc:ChargeIndicator', String(each.charge)),
    leaf('cbc:AllowanceChargeReason', each.reason),
    money('cbc:Amount', each.amount),
    tax === undefined
      ? null
      : branch('cac:TaxCategory', [leaf('cbc:ID', tax.category), leaf('cbc:Percent', tax.rate), scheme]),
  ]);
}

function payment({ payment: means, credit, due }: SemanticInvoice): XmlElement | null {
  if (means === undefined) return null;
  return branch('cac:PaymentMeans', [
    leaf('cbc:PaymentMeansCode', means.code),
    credit ? leaf('cbc:PaymentDueDate', due) : null,
    leaf('cbc:PaymentID', means.remittance),
    branch('cac:PayeeFinancialAccount', [
      leaf('cbc:ID', means.account?.identifier),
      leaf('cbc:Name', means.account?.name),
      branch('cac:FinancialInstitutionBranch', [leaf('cbc:ID', means.account?.provider)]),
    ]),
  ]);
}

function taxTotal({ taxes, totals: { tax: total } }: SemanticInvoice, money: Money): XmlElement | null {
  return branch('cac:TaxTotal', [
    money('cbc:TaxAmount', total),
    taxes.map(({ tax, base, amount, reason, reasonCode }) =>
      branch('cac:TaxSubtotal', [
        money('cbc:TaxableAmount', base),
        money('cbc:TaxAmount', amount),
        branch('cac:TaxCategory', [
          leaf('cbc:ID', tax.category),
          leaf('cbc:Percent', tax.rate),
          leaf('cbc:TaxExemptionReasonCode', reasonCode),
          leaf('cbc:TaxExemptionReason', reason),
          scheme,
        ]),
      ]),
    ),
  ]);
}

function totals({ totals: sums }: SemanticInvoice, money: Money): XmlElement | null {
  return branch('cac:LegalMonetaryTotal', [
    money('cbc:LineExtensionAmount', sums.lines),
    money('cbc:TaxExclusiveAmount', sums.net),
    money('cbc:TaxInclusiveAmount', sums.gross),
    money('cbc:AllowanceTotalAmount', sums.allowances),
    money('cbc:ChargeTotalAmount', sums.charges),
    money('cbc:PrepaidAmount', sums.prepaid),
    money('cbc:PayableRoundingAmount', sums.rounding),
    money('cbc:PayableAmount', sums.due),
  ]);
}

function lineElement(line: SemanticLine, credit: boolean, money: Money): XmlElement | null {
  const unit = { unitCode: line.unit };
  return branch(credit ? 'cac:CreditNoteLine' : 'cac:InvoiceLine', [
    leaf('cbc:ID', line.id),
    leaf('cbc:Note', line.note),
    leaf(credit ? 'cbc:CreditedQuantity' : 'cbc:InvoicedQuantity', line.quantity, unit),
    money('cbc:LineExtensionAmount', line.net),
    period(line.day === undefined ? undefined : { from: line.day, to: line.day }),
    line.allowances.map((each) => allowance(each, money)),
    branch('cac:Item', [
      leaf('cbc:Name', line.name),
      branch('cac:ClassifiedTaxCategory', [
        leaf('cbc:ID', line.tax.category),
        leaf('cbc:Percent', line.tax.rate),
        scheme,
      ]),
      line.attributes.map(({ name, value }) =>
        branch('cac:AdditionalItemProperty', [leaf('cbc:Name', name), leaf('cbc:Value', value)]),
      ),
    ]),
    branch('cac:Price', [money('cbc:PriceAmount', line.price), leaf('cbc:BaseQuantity', line.baseQuantity, unit)]),
  ]);
}
