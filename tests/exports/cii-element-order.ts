// Source: UN/CEFACT Cross Industry Invoice D16B, CrossIndustryInvoice_100pD16B.xsd and
// CrossIndustryInvoice_ReusableAggregateBusinessInformationEntity_100pD16B.xsd: the sequence of each type used, whole.
const sequences: Readonly<Record<string, string>> = {
  CrossIndustryInvoice:
    'ExchangedDocumentContext ExchangedDocument SupplyChainTradeTransaction ValuationBreakdownStatement',
  ExchangedDocumentContext: `
    SpecifiedTransactionID TestIndicator BusinessProcessSpecifiedDocumentContextParameter
    BIMSpecifiedDocumentContextParameter ScenarioSpecifiedDocumentContextParameter
    ApplicationSpecifiedDocumentContextParameter GuidelineSpecifiedDocumentContextParameter
    SubsetSpecifiedDocumentContextParameter MessageStandardSpecifiedDocumentContextParameter
  `,
  GuidelineSpecifiedDocumentContextParameter: `
    ID Value SpecifiedDocumentVersion
  `,
  ExchangedDocument: `
    ID Name TypeCode IssueDateTime CopyIndicator Purpose ControlRequirementIndicator LanguageID PurposeCode
    RevisionDateTime VersionID GlobalID RevisionID PreviousRevisionID CategoryCode IncludedNote
    EffectiveSpecifiedPeriod IssuerTradeParty
  `,
  IncludedNote: `
    Subject ContentCode Content SubjectCode ID
  `,
  SupplyChainTradeTransaction: `
    IncludedSupplyChainTradeLineItem ApplicableHeaderTradeAgreement ApplicableHeaderTradeDelivery
    ApplicableHeaderTradeSettlement
  `,
  IncludedSupplyChainTradeLineItem: `
    DescriptionCode AssociatedDocumentLineDocument SpecifiedTradeProduct SpecifiedLineTradeAgreement
    SpecifiedLineTradeDelivery SpecifiedLineTradeSettlement IncludedSubordinateTradeLineItem
  `,
  AssociatedDocumentLineDocument: `
    LineID ParentLineID LineStatusCode LineStatusReasonCode IncludedNote
  `,
  SpecifiedTradeProduct: `
    ID GlobalID SellerAssignedID BuyerAssignedID ManufacturerAssignedID Name TradeName Description TypeCode
    NetWeightMeasure GrossWeightMeasure ProductGroupID EndItemTypeCode EndItemName AreaDensityMeasure
    UseDescription BrandName SubBrandName DrainedNetWeightMeasure VariableMeasureIndicator ColourCode
    ColourDescription Designation FormattedCancellationAnnouncedLaunchDateTime
    FormattedLatestProductDataChangeDateTime ApplicableProductCharacteristic ApplicableMaterialGoodsCharacteristic
    DesignatedProductClassification IndividualTradeProductInstance
    CertificationEvidenceReferenceReferencedDocument InspectionReferenceReferencedDocument OriginTradeCountry
    LinearSpatialDimension MinimumLinearSpatialDimension MaximumLinearSpatialDimension ManufacturerTradeParty
    PresentationSpecifiedBinaryFile MSDSReferenceReferencedDocument AdditionalReferenceReferencedDocument
    LegalRightsOwnerTradeParty BrandOwnerTradeParty IncludedReferencedProduct InformationNote
  `,
  ApplicableProductCharacteristic: `
    ID TypeCode Description ValueMeasure MeasurementMethodCode Value ValueCode ValueDateTime ValueIndicator
    ContentTypeCode ValueSpecifiedBinaryFile ApplicableProductCharacteristicCondition ApplicableReferencedStandard
  `,
  SpecifiedLineTradeAgreement: `
    BuyerReference BuyerRequisitionerTradeParty ApplicableTradeDeliveryTerms SellerOrderReferencedDocument
    BuyerOrderReferencedDocument QuotationReferencedDocument ContractReferencedDocument
    DemandForecastReferencedDocument PromotionalDealReferencedDocument AdditionalReferencedDocument
    GrossPriceProductTradePrice NetPriceProductTradePrice RequisitionerReferencedDocument ItemSellerTradeParty
    ItemBuyerTradeParty IncludedSpecifiedMarketplace UltimateCustomerOrderReferencedDocument
  `,
  BuyerOrderReferencedDocument: `
    IssuerAssignedID URIID StatusCode CopyIndicator LineID TypeCode GlobalID RevisionID Name
    AttachmentBinaryObject Information ReferenceTypeCode SectionName PreviousRevisionID FormattedIssueDateTime
    EffectiveSpecifiedPeriod IssuerTradeParty AttachedSpecifiedBinaryFile
  `,
  NetPriceProductTradePrice: `
    TypeCode ChargeAmount BasisQuantity MinimumQuantity MaximumQuantity ChangeReason
    OrderUnitConversionFactorNumeric AppliedTradeAllowanceCharge ValiditySpecifiedPeriod IncludedTradeTax
    DeliveryTradeLocation TradeComparisonReferencePrice AssociatedReferencedDocument
  `,
  SpecifiedLineTradeDelivery: `
    RequestedQuantity ReceivedQuantity BilledQuantity ChargeFreeQuantity PackageQuantity ProductUnitQuantity
    PerPackageUnitQuantity NetWeightMeasure GrossWeightMeasure TheoreticalWeightMeasure DespatchedQuantity
    SpecifiedDeliveryAdjustment IncludedSupplyChainPackaging RelatedSupplyChainConsignment ShipToTradeParty
    UltimateShipToTradeParty ShipFromTradeParty ActualDespatchSupplyChainEvent ActualPickUpSupplyChainEvent
    RequestedDeliverySupplyChainEvent ActualDeliverySupplyChainEvent ActualReceiptSupplyChainEvent
    AdditionalReferencedDocument DespatchAdviceReferencedDocument ReceivingAdviceReferencedDocument
    DeliveryNoteReferencedDocument ConsumptionReportReferencedDocument PackingListReferencedDocument
  `,
  ShipToTradeParty: `
    ID GlobalID Name RoleCode Description SpecifiedLegalOrganization DefinedTradeContact PostalTradeAddress
    URIUniversalCommunication SpecifiedTaxRegistration EndPointURIUniversalCommunication
    LogoAssociatedSpecifiedBinaryFile
  `,
  SpecifiedLegalOrganization: `
    LegalClassificationCode Name ID TradingBusinessName PostalTradeAddress AuthorizedLegalRegistration
  `,
  PostalTradeAddress: `
    ID PostcodeCode PostOfficeBox BuildingName LineOne LineTwo LineThree LineFour LineFive StreetName CityName
    CitySubDivisionName CountryID CountryName CountrySubDivisionID CountrySubDivisionName AttentionOf CareOf
    BuildingNumber DepartmentName AdditionalStreetName
  `,
  DefinedTradeContact: `
    ID PersonName DepartmentName TypeCode JobTitle Responsibility PersonID TelephoneUniversalCommunication
    DirectTelephoneUniversalCommunication MobileTelephoneUniversalCommunication FaxUniversalCommunication
    EmailURIUniversalCommunication TelexUniversalCommunication VOIPUniversalCommunication
    InstantMessagingUniversalCommunication SpecifiedNote SpecifiedContactPerson
  `,
  TelephoneUniversalCommunication: `
    URIID ChannelCode CompleteNumber
  `,
  EmailURIUniversalCommunication: `
    URIID ChannelCode CompleteNumber
  `,
  URIUniversalCommunication: `
    URIID ChannelCode CompleteNumber
  `,
  SpecifiedTaxRegistration: `
    ID AssociatedRegisteredTax
  `,
  ActualDeliverySupplyChainEvent: `
    ID OccurrenceDateTime TypeCode Description DescriptionBinaryObject UnitQuantity LatestOccurrenceDateTime
    EarliestOccurrenceDateTime OccurrenceSpecifiedPeriod OccurrenceLogisticsLocation
  `,
  SpecifiedLineTradeSettlement: `
    PaymentReference InvoiceIssuerReference TotalAdjustmentAmount DiscountIndicator ApplicableTradeTax
    BillingSpecifiedPeriod SpecifiedTradeAllowanceCharge SubtotalCalculatedTradeTax
    SpecifiedLogisticsServiceCharge SpecifiedTradePaymentTerms SpecifiedTradeSettlementLineMonetarySummation
    SpecifiedFinancialAdjustment InvoiceReferencedDocument AdditionalReferencedDocument
    PayableSpecifiedTradeAccountingAccount ReceivableSpecifiedTradeAccountingAccount
    PurchaseSpecifiedTradeAccountingAccount SalesSpecifiedTradeAccountingAccount
    SpecifiedTradeSettlementFinancialCard
  `,
  ApplicableTradeTax: `
    CalculatedAmount TypeCode ExemptionReason CalculatedRate CalculationSequenceNumeric BasisQuantity BasisAmount
    UnitBasisAmount LineTotalBasisAmount AllowanceChargeBasisAmount CategoryCode CurrencyCode Jurisdiction
    CustomsDutyIndicator ExemptionReasonCode TaxBasisAllowanceRate TaxPointDate Type InformationAmount
    CategoryName DueDateTypeCode RateApplicablePercent SpecifiedTradeAccountingAccount ServiceSupplyTradeCountry
    BuyerRepayableTaxSpecifiedTradeAccountingAccount SellerPayableTaxSpecifiedTradeAccountingAccount
    SellerRefundableTaxSpecifiedTradeAccountingAccount BuyerDeductibleTaxSpecifiedTradeAccountingAccount
    BuyerNonDeductibleTaxSpecifiedTradeAccountingAccount PlaceApplicableTradeLocation
  `,
  BillingSpecifiedPeriod: `
    DurationMeasure InclusiveIndicator Description StartDateTime EndDateTime CompleteDateTime OpenIndicator
    SeasonCode ID Name SequenceNumeric StartDateFlexibilityCode ContinuousIndicator PurposeCode
  `,
  SpecifiedTradeAllowanceCharge: `
    ChargeIndicator ID SequenceNumeric CalculationPercent BasisAmount BasisQuantity PrepaidIndicator ActualAmount
    UnitBasisAmount ReasonCode Reason TypeCode CategoryTradeTax ActualTradeCurrencyExchange
  `,
  CategoryTradeTax: `
    CalculatedAmount TypeCode ExemptionReason CalculatedRate CalculationSequenceNumeric BasisQuantity BasisAmount
    UnitBasisAmount LineTotalBasisAmount AllowanceChargeBasisAmount CategoryCode CurrencyCode Jurisdiction
    CustomsDutyIndicator ExemptionReasonCode TaxBasisAllowanceRate TaxPointDate Type InformationAmount
    CategoryName DueDateTypeCode RateApplicablePercent SpecifiedTradeAccountingAccount ServiceSupplyTradeCountry
    BuyerRepayableTaxSpecifiedTradeAccountingAccount SellerPayableTaxSpecifiedTradeAccountingAccount
    SellerRefundableTaxSpecifiedTradeAccountingAccount BuyerDeductibleTaxSpecifiedTradeAccountingAccount
    BuyerNonDeductibleTaxSpecifiedTradeAccountingAccount PlaceApplicableTradeLocation
  `,
  SpecifiedTradePaymentTerms: `
    ID FromEventCode SettlementPeriodMeasure Description DueDateDateTime TypeCode InstructionTypeCode
    DirectDebitMandateID PartialPaymentPercent PaymentMeansID PartialPaymentAmount
    ApplicableTradePaymentPenaltyTerms ApplicableTradePaymentDiscountTerms PayeeTradeParty
  `,
  SpecifiedTradeSettlementLineMonetarySummation: `
    LineTotalAmount ChargeTotalAmount AllowanceTotalAmount TaxBasisTotalAmount TaxTotalAmount GrandTotalAmount
    InformationAmount TotalAllowanceChargeAmount TotalRetailValueInformationAmount GrossLineTotalAmount
    NetLineTotalAmount NetIncludingTaxesLineTotalAmount ProductWeightLossInformationAmount
  `,
  InvoiceReferencedDocument: `
    IssuerAssignedID URIID StatusCode CopyIndicator LineID TypeCode GlobalID RevisionID Name
    AttachmentBinaryObject Information ReferenceTypeCode SectionName PreviousRevisionID FormattedIssueDateTime
    EffectiveSpecifiedPeriod IssuerTradeParty AttachedSpecifiedBinaryFile
  `,
  ApplicableHeaderTradeAgreement: `
    Reference BuyerReference SellerTradeParty BuyerTradeParty SalesAgentTradeParty BuyerRequisitionerTradeParty
    BuyerAssignedAccountantTradeParty SellerAssignedAccountantTradeParty BuyerTaxRepresentativeTradeParty
    SellerTaxRepresentativeTradeParty ProductEndUserTradeParty ApplicableTradeDeliveryTerms
    SellerOrderReferencedDocument BuyerOrderReferencedDocument QuotationReferencedDocument
    OrderResponseReferencedDocument ContractReferencedDocument DemandForecastReferencedDocument
    SupplyInstructionReferencedDocument PromotionalDealReferencedDocument PriceListReferencedDocument
    AdditionalReferencedDocument RequisitionerReferencedDocument BuyerAgentTradeParty
    PurchaseConditionsReferencedDocument SpecifiedProcuringProject UltimateCustomerOrderReferencedDocument
  `,
  SellerTradeParty: `
    ID GlobalID Name RoleCode Description SpecifiedLegalOrganization DefinedTradeContact PostalTradeAddress
    URIUniversalCommunication SpecifiedTaxRegistration EndPointURIUniversalCommunication
    LogoAssociatedSpecifiedBinaryFile
  `,
  BuyerTradeParty: `
    ID GlobalID Name RoleCode Description SpecifiedLegalOrganization DefinedTradeContact PostalTradeAddress
    URIUniversalCommunication SpecifiedTaxRegistration EndPointURIUniversalCommunication
    LogoAssociatedSpecifiedBinaryFile
  `,
  ApplicableHeaderTradeDelivery: `
    RelatedSupplyChainConsignment ShipToTradeParty UltimateShipToTradeParty ShipFromTradeParty
    ActualDespatchSupplyChainEvent ActualPickUpSupplyChainEvent ActualDeliverySupplyChainEvent
    ActualReceiptSupplyChainEvent AdditionalReferencedDocument DespatchAdviceReferencedDocument
    ReceivingAdviceReferencedDocument DeliveryNoteReferencedDocument ConsumptionReportReferencedDocument
    PreviousDeliverySupplyChainEvent PackingListReferencedDocument
  `,
  ApplicableHeaderTradeSettlement: `
    DuePayableAmount CreditorReferenceTypeCode CreditorReferenceType CreditorReferenceIssuerID CreditorReferenceID
    PaymentReference TaxCurrencyCode InvoiceCurrencyCode PaymentCurrencyCode InvoiceIssuerReference
    InvoiceDateTime NextInvoiceDateTime CreditReasonCode CreditReason InvoicerTradeParty InvoiceeTradeParty
    PayeeTradeParty PayerTradeParty TaxApplicableTradeCurrencyExchange InvoiceApplicableTradeCurrencyExchange
    PaymentApplicableTradeCurrencyExchange SpecifiedTradeSettlementPaymentMeans ApplicableTradeTax
    BillingSpecifiedPeriod SpecifiedTradeAllowanceCharge SubtotalCalculatedTradeTax
    SpecifiedLogisticsServiceCharge SpecifiedTradePaymentTerms SpecifiedTradeSettlementHeaderMonetarySummation
    SpecifiedFinancialAdjustment InvoiceReferencedDocument ProFormaInvoiceReferencedDocument
    LetterOfCreditReferencedDocument FactoringAgreementReferencedDocument FactoringListReferencedDocument
    PayableSpecifiedTradeAccountingAccount ReceivableSpecifiedTradeAccountingAccount
    PurchaseSpecifiedTradeAccountingAccount SalesSpecifiedTradeAccountingAccount
    SpecifiedTradeSettlementFinancialCard SpecifiedAdvancePayment UltimatePayeeTradeParty
  `,
  SpecifiedTradeSettlementPaymentMeans: `
    PaymentChannelCode TypeCode GuaranteeMethodCode PaymentMethodCode Information ID
    ApplicableTradeSettlementFinancialCard PayerPartyDebtorFinancialAccount PayeePartyCreditorFinancialAccount
    PayerSpecifiedDebtorFinancialInstitution PayeeSpecifiedCreditorFinancialInstitution
  `,
  PayeePartyCreditorFinancialAccount: `
    IBANID AccountName ProprietaryID
  `,
  PayeeSpecifiedCreditorFinancialInstitution: `
    BICID CHIPSUniversalID NewZealandNCCID IrishNSCID UKSortCodeID CHIPSParticipantID SwissBCID
    FedwireRoutingNumberID PortugueseNCCID RussianCentralBankID ItalianDomesticID AustrianBankleitzahlID
    CanadianPaymentsAssociationID SICID GermanBankleitzahlID SpanishDomesticInterbankingID SouthAfricanNCCID
    HongKongBankID AustralianBSBID IndianFinancialSystemID HellenicBankID PolishNationalClearingID Name
    ClearingSystemName JapanFinancialInstitutionCommonID LocationFinancialInstitutionAddress
    SubDivisionBranchFinancialInstitution
  `,
  SpecifiedTradeSettlementHeaderMonetarySummation: `
    LineTotalAmount ChargeTotalAmount AllowanceTotalAmount TaxBasisTotalAmount TaxTotalAmount RoundingAmount
    GrandTotalAmount InformationAmount TotalPrepaidAmount TotalDiscountAmount TotalAllowanceChargeAmount
    DuePayableAmount RetailValueExcludingTaxInformationAmount TotalDepositFeeInformationAmount
    ProductValueExcludingTobaccoTaxInformationAmount TotalRetailValueInformationAmount GrossLineTotalAmount
    NetLineTotalAmount NetIncludingTaxesLineTotalAmount
  `,
  ChargeIndicator: 'Indicator IndicatorString',
  IssueDateTime: 'DateTimeString DateTime',
  OccurrenceDateTime: 'DateTimeString DateTime',
  DueDateDateTime: 'DateTimeString DateTime',
  StartDateTime: 'DateTimeString DateTime',
  EndDateTime: 'DateTimeString DateTime',
  FormattedIssueDateTime: 'DateTimeString DateTime',
};

/** The children that an element may have, in their order, without prefixes. */
export const ciiElementOrder: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(sequences).map(([name, words]) => [name, words.trim().split(/\s+/)]),
);
