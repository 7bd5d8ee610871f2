// Source: UBL 2.1 (OASIS Standard, 2013), xsd/maindoc/UBL-Invoice-2.1.xsd and UBL-CreditNote-2.1.xsd, xsd/common/UBL-CommonAggregateComponents-2.1.xsd:
// the sequence of each type, whole. An element may stand only in the place of its name.
const sequences: Readonly<Record<string, string>> = {
  Invoice: `
    cbc:UBLVersionID cbc:CustomizationID cbc:ProfileID cbc:ProfileExecutionID cbc:ID cbc:CopyIndicator cbc:UUID
    cbc:IssueDate cbc:IssueTime cbc:DueDate cbc:InvoiceTypeCode cbc:Note cbc:TaxPointDate cbc:DocumentCurrencyCode
    cbc:TaxCurrencyCode cbc:PricingCurrencyCode cbc:PaymentCurrencyCode cbc:PaymentAlternativeCurrencyCode
    cbc:AccountingCostCode cbc:AccountingCost cbc:LineCountNumeric cbc:BuyerReference cac:InvoicePeriod
    cac:OrderReference cac:BillingReference cac:DespatchDocumentReference cac:ReceiptDocumentReference
    cac:StatementDocumentReference cac:OriginatorDocumentReference cac:ContractDocumentReference
    cac:AdditionalDocumentReference cac:ProjectReference cac:Signature cac:AccountingSupplierParty
    cac:AccountingCustomerParty cac:PayeeParty cac:BuyerCustomerParty cac:SellerSupplierParty
    cac:TaxRepresentativeParty cac:Delivery cac:DeliveryTerms cac:PaymentMeans cac:PaymentTerms cac:PrepaidPayment
    cac:AllowanceCharge cac:TaxExchangeRate cac:PricingExchangeRate cac:PaymentExchangeRate
    cac:PaymentAlternativeExchangeRate cac:TaxTotal cac:WithholdingTaxTotal cac:LegalMonetaryTotal cac:InvoiceLine
  `,
  CreditNote: `
    cbc:UBLVersionID cbc:CustomizationID cbc:ProfileID cbc:ProfileExecutionID cbc:ID cbc:CopyIndicator cbc:UUID
    cbc:IssueDate cbc:IssueTime cbc:TaxPointDate cbc:CreditNoteTypeCode cbc:Note cbc:DocumentCurrencyCode
    cbc:TaxCurrencyCode cbc:PricingCurrencyCode cbc:PaymentCurrencyCode cbc:PaymentAlternativeCurrencyCode
    cbc:AccountingCostCode cbc:AccountingCost cbc:LineCountNumeric cbc:BuyerReference cac:InvoicePeriod
    cac:DiscrepancyResponse cac:OrderReference cac:BillingReference cac:DespatchDocumentReference
    cac:ReceiptDocumentReference cac:ContractDocumentReference cac:AdditionalDocumentReference
    cac:StatementDocumentReference cac:OriginatorDocumentReference cac:Signature cac:AccountingSupplierParty
    cac:AccountingCustomerParty cac:PayeeParty cac:BuyerCustomerParty cac:SellerSupplierParty
    cac:TaxRepresentativeParty cac:Delivery cac:DeliveryTerms cac:PaymentMeans cac:PaymentTerms
    cac:TaxExchangeRate cac:PricingExchangeRate cac:PaymentExchangeRate cac:PaymentAlternativeExchangeRate
    cac:AllowanceCharge cac:TaxTotal cac:LegalMonetaryTotal cac:CreditNoteLine
  `,
  'cac:InvoicePeriod': `
    cbc:StartDate cbc:StartTime cbc:EndDate cbc:EndTime cbc:DurationMeasure cbc:DescriptionCode cbc:Description
  `,
  'cac:OrderReference': `
    cbc:ID cbc:SalesOrderID cbc:CopyIndicator cbc:UUID cbc:IssueDate cbc:IssueTime cbc:CustomerReference
    cbc:OrderTypeCode cac:DocumentReference
  `,
  'cac:BillingReference': `
    cac:InvoiceDocumentReference cac:SelfBilledInvoiceDocumentReference cac:CreditNoteDocumentReference
    cac:SelfBilledCreditNoteDocumentReference cac:DebitNoteDocumentReference cac:ReminderDocumentReference
    cac:AdditionalDocumentReference cac:BillingReferenceLine
  `,
  'cac:InvoiceDocumentReference': `
    cbc:ID cbc:CopyIndicator cbc:UUID cbc:IssueDate cbc:IssueTime cbc:DocumentTypeCode cbc:DocumentType cbc:XPath
    cbc:LanguageID cbc:LocaleCode cbc:VersionID cbc:DocumentStatusCode cbc:DocumentDescription cac:Attachment
    cac:ValidityPeriod cac:IssuerParty cac:ResultOfVerification
  `,
  'cac:AccountingSupplierParty': `
    cbc:CustomerAssignedAccountID cbc:AdditionalAccountID cbc:DataSendingCapability cac:Party cac:DespatchContact
    cac:AccountingContact cac:SellerContact
  `,
  'cac:AccountingCustomerParty': `
    cbc:CustomerAssignedAccountID cbc:SupplierAssignedAccountID cbc:AdditionalAccountID cac:Party
    cac:DeliveryContact cac:AccountingContact cac:BuyerContact
  `,
  'cac:Party': `
    cbc:MarkCareIndicator cbc:MarkAttentionIndicator cbc:WebsiteURI cbc:LogoReferenceID cbc:EndpointID
    cbc:IndustryClassificationCode cac:PartyIdentification cac:PartyName cac:Language cac:PostalAddress
    cac:PhysicalLocation cac:PartyTaxScheme cac:PartyLegalEntity cac:Contact cac:Person cac:AgentParty
    cac:ServiceProviderParty cac:PowerOfAttorney cac:FinancialAccount
  `,
  'cac:PartyIdentification': `
    cbc:ID
  `,
  'cac:PostalAddress': `
    cbc:ID cbc:AddressTypeCode cbc:AddressFormatCode cbc:Postbox cbc:Floor cbc:Room cbc:StreetName
    cbc:AdditionalStreetName cbc:BlockName cbc:BuildingName cbc:BuildingNumber cbc:InhouseMail cbc:Department
    cbc:MarkAttention cbc:MarkCare cbc:PlotIdentification cbc:CitySubdivisionName cbc:CityName cbc:PostalZone
    cbc:CountrySubentity cbc:CountrySubentityCode cbc:Region cbc:District cbc:TimezoneOffset cac:AddressLine
    cac:Country cac:LocationCoordinate
  `,
  'cac:AddressLine': `
    cbc:Line
  `,
  'cac:Country': `
    cbc:IdentificationCode cbc:Name
  `,
  'cac:PartyTaxScheme': `
    cbc:RegistrationName cbc:CompanyID cbc:TaxLevelCode cbc:ExemptionReasonCode cbc:ExemptionReason
    cac:RegistrationAddress cac:TaxScheme
  `,
  'cac:TaxScheme': `
    cbc:ID cbc:Name cbc:TaxTypeCode cbc:CurrencyCode cac:JurisdictionRegionAddress
  `,
  'cac:PartyLegalEntity': `
    cbc:RegistrationName cbc:CompanyID cbc:RegistrationDate cbc:RegistrationExpirationDate
    cbc:CompanyLegalFormCode cbc:CompanyLegalForm cbc:SoleProprietorshipIndicator cbc:CompanyLiquidationStatusCode
    cbc:CorporateStockAmount cbc:FullyPaidSharesIndicator cac:RegistrationAddress cac:CorporateRegistrationScheme
    cac:HeadOfficeParty cac:ShareholderParty
  `,
  'cac:Contact': `
    cbc:ID cbc:Name cbc:Telephone cbc:Telefax cbc:ElectronicMail cbc:Note cac:OtherCommunication
  `,
  'cac:Delivery': `
    cbc:ID cbc:Quantity cbc:MinimumQuantity cbc:MaximumQuantity cbc:ActualDeliveryDate cbc:ActualDeliveryTime
    cbc:LatestDeliveryDate cbc:LatestDeliveryTime cbc:ReleaseID cbc:TrackingID cac:DeliveryAddress
    cac:DeliveryLocation cac:AlternativeDeliveryLocation cac:RequestedDeliveryPeriod cac:PromisedDeliveryPeriod
    cac:EstimatedDeliveryPeriod cac:CarrierParty cac:DeliveryParty cac:NotifyParty cac:Despatch cac:DeliveryTerms
    cac:MinimumDeliveryUnit cac:MaximumDeliveryUnit cac:Shipment
  `,
  'cac:DeliveryLocation': `
    cbc:ID cbc:Description cbc:Conditions cbc:CountrySubentity cbc:CountrySubentityCode cbc:LocationTypeCode
    cbc:InformationURI cbc:Name cac:ValidityPeriod cac:Address cac:SubsidiaryLocation cac:LocationCoordinate
  `,
  'cac:Address': `
    cbc:ID cbc:AddressTypeCode cbc:AddressFormatCode cbc:Postbox cbc:Floor cbc:Room cbc:StreetName
    cbc:AdditionalStreetName cbc:BlockName cbc:BuildingName cbc:BuildingNumber cbc:InhouseMail cbc:Department
    cbc:MarkAttention cbc:MarkCare cbc:PlotIdentification cbc:CitySubdivisionName cbc:CityName cbc:PostalZone
    cbc:CountrySubentity cbc:CountrySubentityCode cbc:Region cbc:District cbc:TimezoneOffset cac:AddressLine
    cac:Country cac:LocationCoordinate
  `,
  'cac:PaymentMeans': `
    cbc:ID cbc:PaymentMeansCode cbc:PaymentDueDate cbc:PaymentChannelCode cbc:InstructionID cbc:InstructionNote
    cbc:PaymentID cac:CardAccount cac:PayerFinancialAccount cac:PayeeFinancialAccount cac:CreditAccount
    cac:PaymentMandate cac:TradeFinancing
  `,
  'cac:PayeeFinancialAccount': `
    cbc:ID cbc:Name cbc:AliasName cbc:AccountTypeCode cbc:AccountFormatCode cbc:CurrencyCode cbc:PaymentNote
    cac:FinancialInstitutionBranch cac:Country
  `,
  'cac:FinancialInstitutionBranch': `
    cbc:ID cbc:Name cac:FinancialInstitution cac:Address
  `,
  'cac:PaymentTerms': `
    cbc:ID cbc:PaymentMeansID cbc:PrepaidPaymentReferenceID cbc:Note cbc:ReferenceEventCode
    cbc:SettlementDiscountPercent cbc:PenaltySurchargePercent cbc:PaymentPercent cbc:Amount
    cbc:SettlementDiscountAmount cbc:PenaltyAmount cbc:PaymentTermsDetailsURI cbc:PaymentDueDate
    cbc:InstallmentDueDate cbc:InvoicingPartyReference cac:SettlementPeriod cac:PenaltyPeriod cac:ExchangeRate
    cac:ValidityPeriod
  `,
  'cac:AllowanceCharge': `
    cbc:ID cbc:ChargeIndicator cbc:AllowanceChargeReasonCode cbc:AllowanceChargeReason cbc:MultiplierFactorNumeric
    cbc:PrepaidIndicator cbc:SequenceNumeric cbc:Amount cbc:BaseAmount cbc:AccountingCostCode cbc:AccountingCost
    cbc:PerUnitAmount cac:TaxCategory cac:TaxTotal cac:PaymentMeans
  `,
  'cac:TaxCategory': `
    cbc:ID cbc:Name cbc:Percent cbc:BaseUnitMeasure cbc:PerUnitAmount cbc:TaxExemptionReasonCode
    cbc:TaxExemptionReason cbc:TierRange cbc:TierRatePercent cac:TaxScheme
  `,
  'cac:TaxTotal': `
    cbc:TaxAmount cbc:RoundingAmount cbc:TaxEvidenceIndicator cbc:TaxIncludedIndicator cac:TaxSubtotal
  `,
  'cac:TaxSubtotal': `
    cbc:TaxableAmount cbc:TaxAmount cbc:CalculationSequenceNumeric cbc:TransactionCurrencyTaxAmount cbc:Percent
    cbc:BaseUnitMeasure cbc:PerUnitAmount cbc:TierRange cbc:TierRatePercent cac:TaxCategory
  `,
  'cac:LegalMonetaryTotal': `
    cbc:LineExtensionAmount cbc:TaxExclusiveAmount cbc:TaxInclusiveAmount cbc:AllowanceTotalAmount
    cbc:ChargeTotalAmount cbc:PrepaidAmount cbc:PayableRoundingAmount cbc:PayableAmount
    cbc:PayableAlternativeAmount
  `,
  'cac:InvoiceLine': `
    cbc:ID cbc:UUID cbc:Note cbc:InvoicedQuantity cbc:LineExtensionAmount cbc:TaxPointDate cbc:AccountingCostCode
    cbc:AccountingCost cbc:PaymentPurposeCode cbc:FreeOfChargeIndicator cac:InvoicePeriod cac:OrderLineReference
    cac:DespatchLineReference cac:ReceiptLineReference cac:BillingReference cac:DocumentReference
    cac:PricingReference cac:OriginatorParty cac:Delivery cac:PaymentTerms cac:AllowanceCharge cac:TaxTotal
    cac:WithholdingTaxTotal cac:Item cac:Price cac:DeliveryTerms cac:SubInvoiceLine cac:ItemPriceExtension
  `,
  'cac:CreditNoteLine': `
    cbc:ID cbc:UUID cbc:Note cbc:CreditedQuantity cbc:LineExtensionAmount cbc:TaxPointDate cbc:AccountingCostCode
    cbc:AccountingCost cbc:PaymentPurposeCode cbc:FreeOfChargeIndicator cac:InvoicePeriod cac:OrderLineReference
    cac:DiscrepancyResponse cac:DespatchLineReference cac:ReceiptLineReference cac:BillingReference
    cac:DocumentReference cac:PricingReference cac:OriginatorParty cac:Delivery cac:PaymentTerms cac:TaxTotal
    cac:AllowanceCharge cac:Item cac:Price cac:DeliveryTerms cac:SubCreditNoteLine cac:ItemPriceExtension
  `,
  'cac:Item': `
    cbc:Description cbc:PackQuantity cbc:PackSizeNumeric cbc:CatalogueIndicator cbc:Name
    cbc:HazardousRiskIndicator cbc:AdditionalInformation cbc:Keyword cbc:BrandName cbc:ModelName
    cac:BuyersItemIdentification cac:SellersItemIdentification cac:ManufacturersItemIdentification
    cac:StandardItemIdentification cac:CatalogueItemIdentification cac:AdditionalItemIdentification
    cac:CatalogueDocumentReference cac:ItemSpecificationDocumentReference cac:OriginCountry
    cac:CommodityClassification cac:TransactionConditions cac:HazardousItem cac:ClassifiedTaxCategory
    cac:AdditionalItemProperty cac:ManufacturerParty cac:InformationContentProviderParty cac:OriginAddress
    cac:ItemInstance cac:Certificate cac:Dimension
  `,
  'cac:ClassifiedTaxCategory': `
    cbc:ID cbc:Name cbc:Percent cbc:BaseUnitMeasure cbc:PerUnitAmount cbc:TaxExemptionReasonCode
    cbc:TaxExemptionReason cbc:TierRange cbc:TierRatePercent cac:TaxScheme
  `,
  'cac:AdditionalItemProperty': `
    cbc:ID cbc:Name cbc:NameCode cbc:TestMethod cbc:Value cbc:ValueQuantity cbc:ValueQualifier cbc:ImportanceCode
    cbc:ListValue cac:UsabilityPeriod cac:ItemPropertyGroup cac:RangeDimension cac:ItemPropertyRange
  `,
  'cac:Price': `
    cbc:PriceAmount cbc:BaseQuantity cbc:PriceChangeReason cbc:PriceTypeCode cbc:PriceType
    cbc:OrderableUnitFactorRate cac:ValidityPeriod cac:PriceList cac:AllowanceCharge cac:PricingExchangeRate
  `,
};

/** The children that an element may have, in their order. */
export const ublElementOrder: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(sequences).map(([name, words]) => [name, words.trim().split(/\s+/)]),
);
