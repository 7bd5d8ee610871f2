import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { ciiParty } from './cii-party.ts';
import { makeSemanticInvoice } from './make-semantic-invoice.ts';
import type { SemanticAllowance, SemanticInvoice, SemanticLine, SemanticTax } from './semantic-invoice.ts';
import { branch, leaf, type XmlElement, xmlText } from './xml-text.ts';

const spaces = {
  'xmlns:rsm': 'urn:un:unece:uncefact:data:standard:CrossIndustryInvoice:100',
  'xmlns:ram': 'urn:un:unece:uncefact:data:standard:ReusableAggregateBusinessInformationEntity:100',
  'xmlns:qdt': 'urn:un:unece:uncefact:data:standard:QualifiedDataType:100',
  'xmlns:udt': 'urn:un:unece:uncefact:data:standard:UnqualifiedDataType:100',
};

/**
 * A document as UN/CEFACT Cross Industry Invoice D16B following EN 16931 (CEN/TS 16931-3-3): the file that a hybrid PDF carries as `factur-x.xml`, profile EN 16931.
 * @param invoice an issued invoice or credit note
 * @throws Problem naming the file and field that the standard asks for and the data lack
 */
export function ciiXml(invoice: IssuedInvoice): string {
  const semantic = makeSemanticInvoice(invoice);
  const document = branch(
    'rsm:CrossIndustryInvoice',
    [
      branch('rsm:ExchangedDocumentContext', [
        branch('ram:GuidelineSpecifiedDocumentContextParameter', [leaf('ram:ID', 'urn:cen.eu:en16931:2017')]),
      ]),
      branch('rsm:ExchangedDocument', [
        leaf('ram:ID', semantic.number),
        leaf('ram:TypeCode', semantic.credit ? '381' : '380'),
        dateTime('ram:IssueDateTime', semantic.issued),
        branch('ram:IncludedNote', [leaf('ram:Content', semantic.note)]),
      ]),
      branch('rsm:SupplyChainTradeTransaction', [
        semantic.lines.map(lineItem),
        agreement(semantic),
        delivery(semantic),
        settlement(semantic),
      ]),
    ],
    spaces,
  );
  return xmlText(document as XmlElement);
}

// format 102 of UN/EDIFACT 2379: YYYYMMDD
function dateTime(name: string, day: string | undefined, prefix: 'udt' | 'qdt' = 'udt'): XmlElement | null {
  return branch(name, [leaf(`${prefix}:DateTimeString`, day?.replaceAll('-', ''), { format: '102' })]);
}

function period(days: { readonly from: string; readonly to: string } | undefined): XmlElement | null {
  return branch('ram:BillingSpecifiedPeriod', [
    dateTime('ram:StartDateTime', days?.from),
    dateTime('ram:EndDateTime', days?.to),
  ]);
}

function tradeTax(name: string, tax: SemanticTax): XmlElement | null {
  return branch(name, [
    leaf('ram:TypeCode', 'VAT'),
    leaf('ram:CategoryCode', tax.category),
    leaf('ram:RateApplicablePercent', tax.rate),
  ]);
}

function allowance(each: SemanticAllowance, tax?: SemanticTax): XmlElement | null {
  return branch('ram:SpecifiedTradeAllowanceCharge', [
    branch('ram:ChargeIndicator', [leaf('udt:Indicator', String(each.charge))]),
    leaf('ram:ActualAmount', each.amount),
    leaf('ram:Reason', each.reason),
    tax === undefined ? null : tradeTax('ram:CategoryTradeTax', tax),
  ]);
}

function lineItem(line: SemanticLine): XmlElement | null {
  return branch('ram:IncludedSupplyChainTradeLineItem', [
    branch('ram:AssociatedDocumentLineDocument', [
      leaf('ram:LineID', line.id),
      branch('ram:IncludedNote', [leaf('ram:Content', line.note)]),
    ]),
    branch('ram:SpecifiedTradeProduct', [
      leaf('ram:Name', line.name),
      line.attributes.map(({ name, value }) =>
        branch('ram:ApplicableProductCharacteristic', [leaf('ram:Description', name), leaf('ram:Value', value)]),
      ),
    ]),
    branch('ram:SpecifiedLineTradeAgreement', [
      branch('ram:NetPriceProductTradePrice', [
        leaf('ram:ChargeAmount', line.price),
        leaf('ram:BasisQuantity', line.baseQuantity, { unitCode: line.unit }),
      ]),
    ]),
    branch('ram:SpecifiedLineTradeDelivery', [leaf('ram:BilledQuantity', line.quantity, { unitCode: line.unit })]),
    branch('ram:SpecifiedLineTradeSettlement', [
      tradeTax('ram:ApplicableTradeTax', line.tax),
      period(line.day === undefined ? undefined : { from: line.day, to: line.day }),
      line.allowances.map((each) => allowance(each)),
      branch('ram:SpecifiedTradeSettlementLineMonetarySummation', [leaf('ram:LineTotalAmount', line.net)]),
    ]),
  ]);
}

function agreement({ buyerReference, seller, buyer, orderReference }: SemanticInvoice): XmlElement | null {
  return branch('ram:ApplicableHeaderTradeAgreement', [
    leaf('ram:BuyerReference', buyerReference),
    ciiParty('ram:SellerTradeParty', seller),
    ciiParty('ram:BuyerTradeParty', buyer),
    branch('ram:BuyerOrderReferencedDocument', [leaf('ram:IssuerAssignedID', orderReference)]),
  ]);
}

function delivery({ deliverToCountry, delivered }: SemanticInvoice): XmlElement | null {
  return branch('ram:ApplicableHeaderTradeDelivery', [
    branch('ram:ShipToTradeParty', [branch('ram:PostalTradeAddress', [leaf('ram:CountryID', deliverToCountry)])]),
    branch('ram:ActualDeliverySupplyChainEvent', [dateTime('ram:OccurrenceDateTime', delivered)]),
  ]);
}

function settlement(semantic: SemanticInvoice): XmlElement | null {
  const { payment, preceding, terms, due } = semantic;
  const account = payment?.account;
  return branch('ram:ApplicableHeaderTradeSettlement', [
    leaf('ram:PaymentReference', payment?.remittance),
    leaf('ram:InvoiceCurrencyCode', semantic.currency),
    branch('ram:SpecifiedTradeSettlementPaymentMeans', [
      leaf('ram:TypeCode', payment?.code),
      branch('ram:PayeePartyCreditorFinancialAccount', [
        leaf('ram:IBANID', account?.iban === true ? account.identifier : undefined),
        leaf('ram:AccountName', account?.name),
        leaf('ram:ProprietaryID', account?.iban === false ? account.identifier : undefined),
      ]),
      branch('ram:PayeeSpecifiedCreditorFinancialInstitution', [leaf('ram:BICID', account?.provider)]),
    ]),
    semantic.taxes.map(({ tax, base, amount, reason, reasonCode }) =>
      branch('ram:ApplicableTradeTax', [
        leaf('ram:CalculatedAmount', amount),
        leaf('ram:TypeCode', 'VAT'),
        leaf('ram:ExemptionReason', reason),
        leaf('ram:BasisAmount', base),
        leaf('ram:CategoryCode', tax.category),
        leaf('ram:ExemptionReasonCode', reasonCode),
        leaf('ram:RateApplicablePercent', tax.rate),
      ]),
    ),
    period(semantic.period),
    semantic.allowances.map((each) => allowance(each, each.tax)),
    branch('ram:SpecifiedTradePaymentTerms', [leaf('ram:Description', terms), dateTime('ram:DueDateDateTime', due)]),
    summation(semantic),
    branch('ram:InvoiceReferencedDocument', [
      leaf('ram:IssuerAssignedID', preceding?.number),
      dateTime('ram:FormattedIssueDateTime', preceding?.issued, 'qdt'),
    ]),
  ]);
}

function summation({ totals, currency }: SemanticInvoice): XmlElement | null {
  return branch('ram:SpecifiedTradeSettlementHeaderMonetarySummation', [
    leaf('ram:LineTotalAmount', totals.lines),
    leaf('ram:ChargeTotalAmount', totals.charges),
    leaf('ram:AllowanceTotalAmount', totals.allowances),
    leaf('ram:TaxBasisTotalAmount', totals.net),
    leaf('ram:TaxTotalAmount', totals.tax, { currencyID: currency }),
    leaf('ram:RoundingAmount', totals.rounding),
    leaf('ram:GrandTotalAmount', totals.gross),
    leaf('ram:TotalPrepaidAmount', totals.prepaid),
    leaf('ram:DuePayableAmount', totals.due),
  ]);
}
